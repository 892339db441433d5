import { AIR_HEAT_RATIO } from '../constants';
import { criticalPressureRatio } from './critical-pressure-ratio';
import type { Fraction, Pascal, Ratio } from '../../units/dimension';
import type { Range } from '../valid-range';

/** Inputs that every flow through a nozzle has: throat, what of it the jet uses, and the air before and behind. */
export const NOZZLE_INPUTS = {
	area: 'area',
	coefficient: 'fraction',
	upstream: 'pressure',
	downstream: 'pressure',
	temperature: 'temperature'
} as const;

/** Absolute pressures; the heat ratio of air holds within 1 % over these temperatures. */
export const NOZZLE_RANGES = {
	area: [1e-8, 0.01],
	coefficient: [0.5, 1],
	upstream: [20e3, 2e6],
	downstream: [0, 2e6],
	temperature: [200, 800]
} as const satisfies Record<keyof typeof NOZZLE_INPUTS, Range>;

/** Of air. */
export const AIR_CRITICAL_RATIO: Fraction = criticalPressureRatio.at({ heatRatio: AIR_HEAT_RATIO as Ratio });

/** Whether air between these absolute pressures moves at the speed of sound in the throat. */
export const isChoked = (upstream: Pascal, downstream: Pascal): boolean =>
	downstream <= AIR_CRITICAL_RATIO * upstream;
