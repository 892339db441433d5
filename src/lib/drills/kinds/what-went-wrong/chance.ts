import type { Random } from '../../random';

const FINE = 1_000_000;

/** True with this chance, 0 to 1, to a millionth. */
export const happens = (random: Random, chance: number): boolean =>
	random.integer(1, FINE) <= Math.round(chance * FINE);
