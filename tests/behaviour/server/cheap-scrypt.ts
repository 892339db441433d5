import type { ScryptCost } from '$lib/server/scrypt';

/** So little work that tests of what surrounds it do not wait; never a cost to keep real secrets under. */
export const CHEAP: ScryptCost = { n: 2, r: 1, p: 1 };
