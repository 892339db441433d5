import { cite } from '../../sources/provenance';
import { AIR_GAS_CONSTANT as R, AIR_HEAT_RATIO as K } from '../constants';
import { defineFormula } from '../formula';
import { AIR_CRITICAL_RATIO, isChoked, NOZZLE_INPUTS, NOZZLE_RANGES } from './nozzle-ends';

/** The part of the equation that is the same for all air. */
const SONIC = Math.sqrt(K / R) * (2 / (K + 1)) ** ((K + 1) / (2 * (K - 1)));

/**
 * Air through a nozzle or orifice that is choked. Pressures are absolute; `upstream` and `temperature` are those of the
 * air at rest before it. `coefficient` is the share of the throat that the jet fills: about 0.97 for a well-rounded
 * approach, 0.61 to 0.65 for a sharp edge just choked and up to 0.85 far beyond.
 * Throws where the pressures do not choke it: `subcriticalAirFlow` holds there.
 */
export const chokedAirFlow = defineFormula({
	id: 'choked-air-flow',
	title: { en: 'Air through a choked nozzle', es: 'Aire por una boquilla en flujo sónico' },
	equation: 'ṁ = C · A · p · √(γ/(R·T)) · (2/(γ + 1))^((γ + 1)/(2(γ − 1)))',
	source: cite(
		'moran-thermal-systems',
		'isentropic flow through a nozzle',
		{ read: 'equation as worked in an open textbook-companion project' },
		'handbook'
	),
	inputs: NOZZLE_INPUTS,
	gives: 'mass-flow',
	validFor: NOZZLE_RANGES,
	compute({ area, coefficient, upstream, downstream, temperature }) {
		if (!isChoked(upstream, downstream))
			throw new RangeError(
				`choked-air-flow: ${downstream} Pa behind ${upstream} Pa does not choke air; allowed is up to ${AIR_CRITICAL_RATIO.toFixed(4)} of upstream`
			);
		return (coefficient * area * upstream * SONIC) / Math.sqrt(temperature);
	}
});
