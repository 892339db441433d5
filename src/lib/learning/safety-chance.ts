import { tryState, type SafetyPlan } from './safety-gate';

/**
 * Exact chance that a person who keeps a share of `rate` drills free of safety stops clears the gate, by counting
 * every path through (drills, misses).
 * @param rate between 0 and 1
 * @param tries how many tries the person makes at most, 1 or more
 */
export function chanceOfClearing(plan: SafetyPlan, rate: number, tries = 1): number {
	if (!(rate >= 0 && rate <= 1)) throw new RangeError(`rate lies between 0 and 1, got ${rate}`);
	let cleared = 0;
	let open = new Map([[0, 1]]);
	for (let drills = 1; open.size > 0; drills += 1) {
		const next = new Map<number, number>();
		for (const [before, mass] of open) {
			for (const [misses, share] of [
				[before, rate],
				[before + 1, 1 - rate]
			] as const) {
				const state = tryState(plan, drills, misses);
				if (state === 'passed') cleared += mass * share;
				if (state === 'open') next.set(misses, (next.get(misses) ?? 0) + mass * share);
			}
		}
		open = next;
	}
	return 1 - (1 - cleared) ** tries;
}
