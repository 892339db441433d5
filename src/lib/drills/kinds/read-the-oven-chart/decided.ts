import type { ChartVerdict } from '$lib/engine';
import type { Load } from './load';
import type { Pace } from './pace';
import type { Soak } from './soak';

/** Kelvins by which a place has to be on its side of a limit for a reader of the chart to see it. */
const CLEAR = 1.5;
const CLEARLY_OVER = 3;
/** Kelvins that a line which crosses a limit climbs or falls at least within the reading tolerance. */
const STEEP = 2.5;
/** Share of the hold window by which an accepted load stays clear of both its ends. */
const WELL_INSIDE = 0.2;

/**
 * What a chart says of its load, by its samples alone; undefined where a reading that is still right could say otherwise.
 */
export function decided(
	{ cure, hold, sheetTop }: Load,
	soak: Soak,
	{ tolerance }: Pace
): ChartVerdict | undefined {
	const [shortest, longest] = [hold.low.value, hold.high.value];
	const { inside, hottest, slowestReached, stretch } = soak;
	// too flat a crossing cannot be put at a time
	if (stretch && Math.min(stretch.rise, stretch.fall) * tolerance < STEEP) return undefined;
	if (hottest >= sheetTop.value + CLEARLY_OVER) return inside >= shortest ? 'long-hot' : undefined;
	if (hottest > cure.high.value) return undefined;
	const off = slowestReached - cure.low.value;
	if (Math.abs(off) < CLEAR) return undefined;
	if (inside <= shortest - 2 * tolerance) return 'short-cold';
	if (inside >= longest + 2 * tolerance) return 'long-hot';
	const room = WELL_INSIDE * (longest - shortest);
	return inside >= shortest + room && inside <= longest - room ? 'accept' : undefined;
}
