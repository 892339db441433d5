import { LARGEST_SEED, type Random } from '../../src/lib/drills/random';

/** A number between 0 and 1, never 0. */
const share = (random: Random): number => (random.integer(0, LARGEST_SEED - 1) + 0.5) / LARGEST_SEED;

/** True with that chance. */
export const happens = (random: Random, chance: number): boolean => share(random) < chance;

/** Normally distributed around 0 (Box and Muller 1958). */
export const normal = (random: Random, deviation: number): number =>
	deviation * Math.sqrt(-2 * Math.log(share(random))) * Math.cos(2 * Math.PI * share(random));
