import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Seeds are whole numbers from 0 to this. */
export const LARGEST_SEED = 0x7fff_ffff;

/** Chance that can be repeated: the same seed gives the same values on any machine. */
export type Random = {
	/** Whole number from low to high, both included. */
	integer(low: number, high: number): number;
	/** One of low, low + step, … high; free of binary dust for the steps used here. */
	between(low: number, high: number, step: number): number;
	pick<T>(from: readonly T[]): T;
	/** `count` different ones, in random order. */
	some<T>(from: readonly T[], count: number): T[];
	/** True once in `times`. */
	onceIn(times: number): boolean;
};

/** Draws thrown away first: neighbouring seeds start out alike and have drifted apart after these. */
const WARM_UP = 24;

export function seeded(seed: number): Random {
	if (!Number.isInteger(seed) || seed < 0 || seed > LARGEST_SEED)
		throw new RangeError(`seed ${seed} is not a whole number from 0 to ${LARGEST_SEED}`);
	const generator = xoroshiro128plus(seed);
	for (let drawn = 0; drawn < WARM_UP; drawn += 1) generator.next();
	const integer = (low: number, high: number) => uniformInt(generator, low, high);
	const shuffled = <T>(from: readonly T[]) => {
		const left = [...from];
		return from.map(() => left.splice(integer(0, left.length - 1), 1)[0] as T);
	};
	return {
		integer,
		between: (low, high, step) =>
			Number((low + integer(0, Math.round((high - low) / step)) * step).toFixed(6)),
		pick(from) {
			if (!from.length) throw new RangeError('nothing to pick from');
			return from[integer(0, from.length - 1)] as (typeof from)[number];
		},
		some: (from, count) => shuffled(from).slice(0, count),
		onceIn: (times) => integer(1, times) === 1
	};
}
