import {
	operatingCharacteristic,
	verdict,
	type SequentialPlan,
	type VerdictState
} from '../../src/lib/learning/index';
import { seeded } from '../../src/lib/drills/random';
import { chanceOfRight, isRight } from './drill-chance';
import type { Learner } from './proving-learners';
import type { ProvingPool } from './proving-pool';
import { happens } from './chance';

/** One figure worked out exactly and observed, with the standard error of the observed one. */
export type Compared = { readonly exact: number; readonly observed: number; readonly error: number };

export type ProvingResult = {
	/** Mean chance over the drills of the pool that one drill is right. */
	readonly perDrill: number;
	readonly passed: Compared;
	readonly failed: Compared;
	readonly undecided: Compared;
	/** Drills until the verdict. */
	readonly drills: Compared;
};

/** The error of a share is never put below one run: for rarer verdicts the normal law does not hold. */
const shareCompared = (exact: number, count: number, runs: number): Compared => ({
	exact,
	observed: count / runs,
	error: Math.max(Math.sqrt((exact * (1 - exact)) / runs), 1 / runs)
});

/** Runs of the real sequential test on drills drawn from the pool, each rule kept or broken by chance. */
function observedRuns(
	plan: SequentialPlan,
	{ drills }: ProvingPool,
	learner: Learner,
	runs: number,
	seed: number
) {
	const random = seeded(seed);
	const verdicts: Record<VerdictState, number> = { passed: 0, failed: 0, undecided: 0, open: 0 };
	let total = 0;
	const broken = (rule: string) => !happens(random, learner.keeps(rule));
	for (let run = 0; run < runs; run += 1) {
		const outcomes = Array.from({ length: plan.truncateAt }, () => isRight(random.pick(drills), broken));
		const { state, n } = verdict(plan, outcomes);
		verdicts[state] += 1;
		total += n;
	}
	return { verdicts, mean: total / runs };
}

/**
 * What the plan does to this learner: exactly, from the mean chance per drill, and as observed. Drills are drawn with
 * replacement, so that each is right with that mean chance, independently of the others.
 */
export function provingResult(
	plan: SequentialPlan,
	pool: ProvingPool,
	learner: Learner,
	{ runs, seed }: { readonly runs: number; readonly seed: number }
): ProvingResult {
	const chances = pool.drills.map((rules) => chanceOfRight(rules, learner));
	const perDrill = chances.reduce((sum, chance) => sum + chance, 0) / chances.length;
	const exact = operatingCharacteristic(plan, Math.min(1, perDrill));
	const { verdicts, mean } = observedRuns(plan, pool, learner, runs, seed);
	const variance = exact.endsAt.reduce((sum, mass, n) => sum + mass * (n - exact.mean) ** 2, 0);
	return {
		perDrill,
		passed: shareCompared(exact.pass, verdicts.passed, runs),
		failed: shareCompared(exact.fail, verdicts.failed, runs),
		undecided: shareCompared(exact.undecided, verdicts.undecided, runs),
		drills: { exact: exact.mean, observed: mean, error: Math.sqrt(variance / runs) }
	};
}

/** How many standard errors the observed figure lies from the exact one. */
export const errorsOff = ({ exact, observed, error }: Compared): number => Math.abs(observed - exact) / error;

/** More than this and the exact figure and the observed one do not agree. */
export const MOST_ERRORS = 4;

export const disagreements = (result: ProvingResult): string[] =>
	(['passed', 'failed', 'undecided', 'drills'] as const).filter((of) => errorsOff(result[of]) > MOST_ERRORS);
