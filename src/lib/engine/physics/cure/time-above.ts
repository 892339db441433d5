import { arithmetic } from '../../sources/provenance';
import type { Kelvin } from '../../units/dimension';
import { TEMPERATURE } from '../heat/lumped-body';
import { defineProcedure } from '../procedure';
import { spansInside, type Readings } from '../readings/reading-spans';

type Inputs = Readings & { readonly threshold: Kelvin };
type TimeAbove = { readonly total: number; readonly longest: number };

/**
 * How long a logged part was at a temperature or above it, in all and at a stretch, with straight lines between the
 * readings. Throws a RangeError for readings that are not in order.
 */
export const timeAbove = defineProcedure<Inputs, TimeAbove>({
	id: 'time-above',
	title: { en: 'Time at temperature on a chart', es: 'Tiempo a temperatura en un registro' },
	equation: 'Σ Δt with T ≥ T₁',
	source: arithmetic('straight lines between readings'),
	inputs: { times: 'duration', temperatures: 'temperature', threshold: 'temperature' },
	validFor: { times: [0, 604_800], temperatures: TEMPERATURE, threshold: TEMPERATURE },
	compute({ threshold, ...readings }) {
		let [total, longest, run, until] = [0, 0, 0, -1];
		for (const { from, to } of spansInside('time-above', readings, threshold, Infinity)) {
			run = from === until ? run + (to - from) : to - from;
			until = to;
			total += to - from;
			longest = Math.max(longest, run);
		}
		return { total, longest };
	}
});
