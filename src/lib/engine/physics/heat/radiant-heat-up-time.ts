import { cite } from '../../sources/provenance';
import { fraction, kelvin } from '../../units/construct';
import { defineFormula } from '../formula';
import { approach, BODY, BODY_RANGE, PATH, PATH_RANGE } from './lumped-body';
import { radiationCoefficient } from './radiation-coefficient';

/** Even, as Simpson's rule asks. The integrand is smooth: twice as many steps move an hour by less than a millisecond. */
const STEPS = 200;

/**
 * Time for a whole part to come from `start` to `target`, heating or cooling, by convection and by radiation from walls
 * as hot as the air. Only where the Biot number is below 0.1.
 *   t = ∫ ρ·c·L/(h + εσ(T + T∞)(T² + T∞²)) dx,  x = ln((T∞ − T₀)/(T∞ − T)), by Simpson's rule.
 */
export const radiantHeatUpTime = defineFormula({
	id: 'radiant-heat-up-time',
	title: { en: 'Heat-up time with radiation', es: 'Tiempo de calentamiento con radiación' },
	equation: 't = ∫ ρ · c · L/(h + εσ(T + T∞)(T² + T∞²)) d ln(T∞ − T) (K)',
	source: cite('incropera-heat', 'eq. 1.9 and ch. 5', { read: 'as worked in example 5.3' }, 'handbook'),
	inputs: { ...BODY, ...PATH, emissivity: 'fraction' },
	gives: 'duration',
	validFor: { ...BODY_RANGE, ...PATH_RANGE, emissivity: [0, 1] },
	compute({ density, heat, depth, heatTransfer, emissivity, ...path }) {
		const { start, air } = path;
		const end = approach(path);
		const slowness = (x: number) => {
			const T = air - (air - start) * Math.exp(-x);
			return (
				1 /
				(heatTransfer +
					radiationCoefficient.at({ emissivity: fraction(emissivity), part: kelvin(T), walls: air }))
			);
		};
		let sum = slowness(0) + slowness(end);
		for (let step = 1; step < STEPS; step++) sum += (step % 2 ? 4 : 2) * slowness((end * step) / STEPS);
		return (density * heat * depth * sum * end) / (3 * STEPS);
	}
});
