import type { Stand } from '$lib/engine';
import type { Random } from '../../random';
import type { Limits } from '../limits-of';
import { distance, inSi, shownBy, type Readable } from './readable';

/** Just outside: within this share of the limit, or so many times what a reading may be off. */
const NEAR_SHARE = 0.12;
const NEAR_READINGS = 5;
/** Below this share of a window nothing is worth drawing. */
const LEAST_SHARE = 0.3;

/** Where a value stands; undefined where it is so near a limit that a reading still right could decide otherwise. */
export function standOf(value: number, { low, high }: Limits, tolerance: number): Stand | undefined {
	const clear = (limit: { slack: number }, by: number) => by > (tolerance + limit.slack) * (1 + 1e-6);
	if (low && clear(low, low.at.value - value)) return 'low';
	if (high && clear(high, value - high.at.value)) return 'high';
	const inside = (!low || clear(low, value - low.at.value)) && (!high || clear(high, high.at.value - value));
	return inside ? 'inside' : undefined;
}

export type Drawn = { readonly shown: number; readonly stand: Stand };

/** What an instrument could show of this job, by how it came to stand there. */
function choices(readable: Readable, limits: Limits) {
	const tolerance = distance(readable, readable.tolerance);
	const least = LEAST_SHARE * (limits.low ?? limits.high)!.at.value;
	const all = shownBy(readable).flatMap((shown) => {
		const value = inSi(readable, shown);
		const stand = value >= least ? standOf(value, limits, tolerance) : undefined;
		return stand ? [{ shown, value, stand }] : [];
	});
	const outside = all.filter(({ stand }) => stand !== 'inside');
	const near = outside.filter(({ value, stand }) => {
		const at = limits[stand as 'low' | 'high']!.at.value;
		return Math.abs(value - at) <= Math.max(NEAR_SHARE * Math.abs(at), NEAR_READINGS * tolerance);
	});
	const mixedUp = outside.filter(
		({ shown }) => readable.mistaken && standOf(readable.mistaken(shown), limits, 0) === 'inside'
	);
	return { inside: all.filter(({ stand }) => stand === 'inside'), near, mixedUp };
}

/** Whether an instrument is fine and long enough for this window to show both sides of a limit. */
export function suits(readable: Readable, limits: Limits): boolean {
	if (!limits.low && !limits.high) return false;
	const { inside, near } = choices(readable, limits);
	return inside.length > 0 && near.length > 0;
}

/**
 * A reading: inside, just outside, or outside as somebody would have set it who took one unit for another, a third of
 * each; where no such mix-up fits the instrument, just outside. Only for an instrument that suits.
 */
export function draw(readable: Readable, limits: Limits, random: Random): Drawn {
	const { inside, near, mixedUp } = choices(readable, limits);
	const { shown, stand } = random.pick(random.pick([inside, near, mixedUp.length ? mixedUp : near]));
	return { shown, stand };
}
