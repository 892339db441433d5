import type { Metre } from '../units/dimension';
import { sampleMean } from './sample-statistics';
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
 */
export function judgeArea(readings: readonly (readonly Metre[])[], min: Metre, max: Metre): AreaVerdict {
	const lowest = spotLimits.lowest.at({ specified: min });
	const highest = spotLimits.highest.at({ specified: max });
	const spots = readings.map((spot) => {
		const mean = sampleMean(spot) as Metre;
		return { mean, verdict: judge(mean, lowest, highest) } as const;
	});
	const mean = sampleMean(spots.map((spot) => spot.mean)) as Metre;
	const verdict = judge(mean, min, max);
	const complete =
		readings.length >= SPOTS_PER_AREA && readings.every((spot) => spot.length >= READINGS_PER_SPOT);
	const accepted = complete && verdict === 'within' && spots.every((spot) => spot.verdict === 'within');
	return { spots, mean, verdict, complete, accepted };
}
