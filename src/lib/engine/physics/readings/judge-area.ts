import { cite } from '../../sources/provenance';
import type { Metre } from '../../units/dimension';
import { defineProcedure } from '../procedure';
import { sampleMean } from './sample-mean';
import { READINGS_PER_SPOT, SPOTS_PER_AREA } from './sampling-plan';
import { spotLimits } from './spot-limits';

export type SpotVerdict = { readonly mean: Metre; readonly verdict: 'within' | 'below' | 'above' };
export type AreaVerdict = {
	readonly spots: readonly SpotVerdict[];
	readonly mean: Metre;
	readonly verdict: 'within' | 'below' | 'above';
	/** Five spots of three readings or more. */
	readonly complete: boolean;
	readonly accepted: boolean;
};

/** A reading exactly at a limit is inside it; far finer than any gauge, this only takes up rounding in the last bits. */
const SLACK = 1e-12;

const judge = (mean: Metre, min: number, max: number) =>
	mean < min - SLACK ? 'below' : mean > max + SLACK ? 'above' : 'within';

/**
 * Judges the readings of one area, spot by spot (metres), against a specified film: the mean of the spots inside it and
 * every spot inside 0.8 of its minimum to 1.2 of its maximum. Fewer readings than the standard asks are never accepted.
 * Throws a RangeError where the minimum is above the maximum. Gauge uncertainty is not in it: see judge-reading.
 */
export const judgeArea = defineProcedure<
	{ readings: readonly (readonly Metre[])[]; min: Metre; max: Metre },
	AreaVerdict
>({
	id: 'judge-area',
	title: { en: 'Film of one area: accepted or not', es: 'Película de un área: aceptada o no' },
	equation: 'min ≤ mean of spots ≤ max, and 0.8 · min ≤ each spot ≤ 1.2 · max',
	source: cite('sspc-pa-2', '§§3, 8, 9, default level 3', { read: 'stored text of 2012/2015' }),
	inputs: { readings: 'length', min: 'length', max: 'length' },
	validFor: { readings: [0, 0.1], min: [0, 0.1], max: [0, 0.1] },
	compute({ readings, min, max }) {
		if (min > max) throw new RangeError(`judge-area: min = ${min} must not be above max = ${max} (SI)`);
		const lowest = spotLimits.lowest.at({ specified: min });
		const highest = spotLimits.highest.at({ specified: max });
		const spots = readings.map((values) => {
			const mean = sampleMean.at({ values }) as Metre;
			return { mean, verdict: judge(mean, lowest, highest) } as const;
		});
		const mean = sampleMean.at({ values: spots.map((spot) => spot.mean) }) as Metre;
		const verdict = judge(mean, min, max);
		const complete =
			readings.length >= SPOTS_PER_AREA && readings.every((spot) => spot.length >= READINGS_PER_SPOT);
		const accepted = complete && verdict === 'within' && spots.every((spot) => spot.verdict === 'within');
		return { spots, mean, verdict, complete, accepted };
	}
});
