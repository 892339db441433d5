import { cite } from '../../sources/provenance';
import { AIR_GAS_CONSTANT as R, AIR_HEAT_RATIO as K } from '../constants';
import { defineFormula } from '../formula';
import { AIR_CRITICAL_RATIO, isChoked, NOZZLE_INPUTS, NOZZLE_RANGES } from './nozzle-ends';

/**
 * Air through a nozzle or orifice below the speed of sound, without loss up to the throat. Pressures are absolute;
 * `upstream` and `temperature` are those of the air at rest before it, `coefficient` as for `chokedAirFlow`.
 * Throws where the pressures choke it, and where the air would flow back.
 */
export const subcriticalAirFlow = defineFormula({
	id: 'subcritical-air-flow',
	title: { en: 'Air through a nozzle that is not choked', es: 'Aire por una boquilla sin flujo sónico' },
	equation: 'ṁ = C · A · p · √(2γ/((γ − 1)·R·T) · (r^(2/γ) − r^((γ + 1)/γ))), r = p(behind)/p',
	source: cite(
		'vennard-fluid-mechanics',
		'example 5.4',
		{ read: 'equation as worked in an open textbook-companion project' },
		'handbook'
	),
	inputs: NOZZLE_INPUTS,
	gives: 'mass-flow',
	validFor: NOZZLE_RANGES,
	compute({ area, coefficient, upstream, downstream, temperature }) {
		if (isChoked(upstream, downstream) || downstream > upstream)
			throw new RangeError(
				`subcritical-air-flow: ${downstream} Pa behind ${upstream} Pa is no flow below sonic; allowed is above ${AIR_CRITICAL_RATIO.toFixed(4)} up to 1 of upstream`
			);
		const r = downstream / upstream;
		const expansion = r ** (2 / K) - r ** ((K + 1) / K);
		return coefficient * area * upstream * Math.sqrt(((2 * K) / ((K - 1) * R * temperature)) * expansion);
	}
});
