import { decisionLines } from './decision-lines';
import type { SequentialPlan } from './sequential-plan';

export type VerdictState = 'open' | 'passed' | 'failed' | 'undecided';

export type Verdict = {
	readonly state: VerdictState;
	/** Drills counted, up to the one at which the verdict fell. */
	readonly n: number;
	readonly right: number;
	/** Natural logarithm of the likelihood ratio of p1 to p0 after n drills. */
	readonly ratio: number;
};

/** The state after exactly n drills of which `right` were right, given that the run was open before. */
export function decide(plan: SequentialPlan, n: number, right: number): Verdict {
	const lines = decisionLines(plan);
	const ratio = right * lines.right + (n - right) * lines.wrong;
	const at = (state: VerdictState): Verdict => ({ state, n, right, ratio });

	if (n < (plan.firstLook ?? 1)) return at('open');
	if (ratio >= lines.upper) return at('passed');
	if (ratio <= lines.lower) return at('failed');
	if (n < plan.truncateAt) return at('open');
	if (plan.passAtTruncation === null) return at('undecided');
	return at(right >= plan.passAtTruncation ? 'passed' : 'failed');
}

/**
 * The verdict on a run of drills in the order they were handed in. The first verdict stands: later outcomes do not
 * count, so that nobody can drill on out of a failed run or back out of a passed one.
 */
export function verdict(plan: SequentialPlan, outcomes: readonly boolean[]): Verdict {
	let right = 0;
	let soFar = decide(plan, 0, 0);
	for (const [index, outcome] of outcomes.entries()) {
		if (outcome) right += 1;
		soFar = decide(plan, index + 1, right);
		if (soFar.state !== 'open') return soFar;
	}
	return soFar;
}
