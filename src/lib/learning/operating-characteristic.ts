import type { SequentialPlan } from './sequential-plan';
import { decide } from './sequential-test';

export type OperatingCharacteristic = {
	/** Chance of each verdict; the three add up to 1. */
	readonly pass: number;
	readonly fail: number;
	readonly undecided: number;
	/** Mean number of drills until the verdict. */
	readonly mean: number;
	/** Chance that the run ends at drill n, by index n. */
	readonly endsAt: readonly number[];
};

/**
 * What a plan does to a person who truly gets a share of `rate` drills right, each drill independent of the others.
 * Counts every path through (drills, right ones) instead of using Wald's approximations, which ignore the overshoot.
 * @param rate between 0 and 1
 * @throws RangeError for a rate outside
 */
export function operatingCharacteristic(plan: SequentialPlan, rate: number): OperatingCharacteristic {
	if (!(rate >= 0 && rate <= 1)) throw new RangeError(`rate lies between 0 and 1, got ${rate}`);
	const chance = { passed: 0, failed: 0, undecided: 0 };
	const endsAt: number[] = [0];
	let open = new Map([[0, 1]]);

	for (let n = 1; n <= plan.truncateAt; n += 1) {
		const next = new Map<number, number>();
		for (const [right, mass] of open) {
			next.set(right, (next.get(right) ?? 0) + mass * (1 - rate));
			next.set(right + 1, (next.get(right + 1) ?? 0) + mass * rate);
		}
		let ended = 0;
		for (const [right, mass] of next) {
			const { state } = decide(plan, n, right);
			if (state === 'open') continue;
			chance[state] += mass;
			ended += mass;
			next.delete(right);
		}
		endsAt.push(ended);
		open = next;
	}

	const mean = endsAt.reduce((sum, mass, n) => sum + n * mass, 0);
	return { pass: chance.passed, fail: chance.failed, undecided: chance.undecided, mean, endsAt };
}
