import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';
import { approach, BODY, BODY_RANGE, PATH, PATH_RANGE } from './lumped-body';

/**
 * Time for a whole part to come from `start` to `target` in air of one temperature, heating or cooling, by convection.
 * Only where the Biot number is below 0.1.
 */
export const heatUpTime = defineFormula({
	id: 'heat-up-time',
	title: { en: 'Heat-up time', es: 'Tiempo de calentamiento' },
	equation: 't = (ρ · c · L/h) · ln((T∞ − T₀)/(T∞ − T))',
	source: cite('holman-heat', 'ch. 4, lumped capacity', { read: 'as worked in example 4-1' }, 'handbook'),
	inputs: { ...BODY, ...PATH },
	gives: 'duration',
	validFor: { ...BODY_RANGE, ...PATH_RANGE },
	compute: ({ density, heat, depth, heatTransfer, ...path }) =>
		((density * heat * depth) / heatTransfer) * approach(path)
});
