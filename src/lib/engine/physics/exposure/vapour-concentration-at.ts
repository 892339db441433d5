import { arithmetic } from '../../sources/provenance';
import { GAS_CONSTANT } from '../constants';
import { defineFormula } from '../formula';

const AIR_INPUTS = { molarMass: 'molar-mass', gas: 'temperature', barometer: 'pressure' } as const;
const AIR_RANGE: { [K in keyof typeof AIR_INPUTS]: [number, number] } = {
	molarMass: [0.002, 0.5],
	gas: [253.15, 773.15],
	barometer: [60_000, 110_000]
};

/** Mass of a cubic metre of the pure vapour: M·p/(R·T). */
const pure = ({ molarMass, gas, barometer }: { [K in keyof typeof AIR_INPUTS]: number }) =>
	(molarMass * barometer) / (GAS_CONSTANT * gas);

/**
 * A vapour's share of the air as mass in a volume of it and back, at the temperature and pressure of this air. Exposure
 * limits are stated at 25 °C and one atmosphere whatever the weather: `vapourConcentration` is for those.
 */
export const vapourConcentrationAt = {
	mass: defineFormula({
		id: 'vapour-concentration-at',
		title: { en: 'Vapour in this air, by weight', es: 'Vapor en este aire, en peso' },
		equation: 'c = x · M · p/(R · T)',
		source: arithmetic('ideal gas'),
		inputs: { share: 'fraction', ...AIR_INPUTS },
		gives: 'density',
		validFor: { share: [0, 1], ...AIR_RANGE },
		compute: (air) => air.share * pure(air)
	}),
	share: defineFormula({
		id: 'vapour-share-at',
		title: { en: 'Share of vapour in this air', es: 'Parte de vapor en este aire' },
		equation: 'x = c · R · T/(M · p)',
		source: arithmetic('ideal gas'),
		inputs: { concentration: 'density', ...AIR_INPUTS },
		gives: 'fraction',
		validFor: { concentration: [0, 1], ...AIR_RANGE },
		compute: (air) => air.concentration / pure(air)
	})
};
