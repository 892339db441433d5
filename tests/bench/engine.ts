/*
 * How fast jobs are solved and graded: traced (a plan with every derivation, a finding for every demand), untraced
 * (which demands are broken, nothing else), beside a general rules engine that evaluates the same conditions, and
 * beside loops that a person would write by hand for the same arithmetic. Everything runs in turns within one process,
 * and only the ratios mean anything. What each side does is checked to agree first; nothing printed here is a limit.
 *
 *   npm run bench
 *
 * Where the aims are missed, and why. Grading untraced takes some 25 times the loop by hand and not 5: the loop has
 * every number and option laid out in rows beforehand, while `breached` reads the plan as it is stored, finds the
 * answer by its field and compares options as words. A packed copy of each plan would close the gap, and would have to
 * be kept true to the plan that people read. The nine rules take some 70 times their arithmetic: each looks up where
 * its numbers hold, checks the range of its formula and keeps what it was given. There is no untraced `solve`: with
 * constructors that kept the bare number only it was at most 12 % faster (104 to 109 against 110 to 118 µs a job), which
 * is not worth a second way to the same plan. Solving is much slower than the other engine's conditions because
 * it works out the limits that the other engine is handed.
 */
import { breached, grade, solve } from '../../src/lib/engine/index';
import { benchJobs, shop } from './bench-jobs';
import { failingByHand, rowsOf } from './hand-grading';
import { limitsByHand, limitsByRules, numbersOf } from './hand-solving';
import { inTurns, type Timed } from './in-turns';
import { rulesEngineFor } from './rules-engine';

const JOBS = 200;
const ROUNDS = 9;

const jobs = benchJobs(JOBS);
const demands = jobs.flatMap(({ plan }) => plan.fields.flatMap((planned) => planned.demands)).length;
const engines = jobs.map(rulesEngineFor);
const rows = jobs.map(rowsOf);
/** Numbers of the jobs that all nine rules speak of; undefined for the others. */
const numbers = jobs.map(({ job, plan }) =>
	plan.decision === 'accept' && shop.sheets[job.coating]!.parts === 2 && job.film === null
		? numbersOf(job)
		: undefined
);

const named = (found: readonly string[]) => [...found].sort().join();
const differ = (a: number, b: number) =>
	Number.isNaN(a) !== Number.isNaN(b) || Math.abs(a - b) > 1e-9 * Math.abs(a);

/** Without this the comparison would be worthless. */
async function checkAgreement() {
	for (const [at, { plan, answers }] of jobs.entries()) {
		const ours = breached(plan, answers).map(({ demand }) => demand.rule);
		const graded = grade(plan, answers).breaches.map(({ rule }) => rule);
		const theirs = await engines[at]!.failing();
		if (named(ours) !== named(graded) || named(ours) !== named(theirs))
			throw new Error(`job ${at}: broken here ${named(ours)}; there ${named(theirs)}`);
		if (ours.length !== failingByHand(rows[at]!)) throw new Error(`job ${at}: the loop by hand disagrees`);
	}
	for (const [at, known] of numbers.entries()) {
		if (!known) continue;
		const [rules, hand] = [limitsByRules(jobs[at]!.job), limitsByHand(known)];
		if (rules.some((value, index) => differ(value, hand[index]!)))
			throw new Error(`job ${at}: limits by rules ${rules.join()}; by hand ${hand.join()}`);
	}
}

const timed = {
	solve: jobs.map(
		({ job }) =>
			() =>
				solve(job, shop)
	),
	grade: jobs.map(
		({ plan, answers }) =>
			() =>
				grade(plan, answers)
	),
	breached: jobs.map(
		({ plan, answers }) =>
			() =>
				breached(plan, answers)
	),
	both: jobs.map(
		({ job, answers }) =>
			() =>
				grade(solve(job, shop), answers)
	),
	quick: jobs.map(
		({ job, answers }) =>
			() =>
				breached(solve(job, shop), answers)
	),
	rulesEngine: engines.map(({ evaluate }) => evaluate),
	handGrading: rows.map((row) => () => failingByHand(row)),
	nineRules: numbers.map((known, at) => known && (() => limitsByRules(jobs[at]!.job))),
	handSolving: numbers.map((known) => known && (() => limitsByHand(known)))
} satisfies Record<string, Timed>;

await checkAgreement();
const took = await inTurns(timed, ROUNDS);

const LABELS: Record<keyof typeof timed, string> = {
	solve: 'solved, traced',
	grade: 'graded, traced',
	breached: 'graded, untraced',
	both: 'solved and graded, traced',
	quick: 'solved, traced, and graded, untraced',
	rulesEngine: 'json-rules-engine, same conditions',
	handGrading: 'by hand: all comparisons of grading',
	nineRules: 'nine rules of arithmetic, traced',
	handSolving: 'by hand: the limits of these nine'
};
const ids = Object.keys(timed) as (keyof typeof timed)[];
console.log(
	`${JOBS} jobs, ${(demands / JOBS).toFixed(1)} demands each; nine rules on ${numbers.filter(Boolean).length} of them`
);
console.table(
	Object.fromEntries(
		ids.map((id) => [
			LABELS[id],
			{ 'jobs per second': Math.round(1e6 / took[id]), 'µs per job': Number(took[id].toPrecision(3)) }
		])
	)
);

const ratio = (slow: keyof typeof timed, fast: keyof typeof timed) => (took[slow] / took[fast]).toFixed(1);
console.log(
	`graded untraced is ${ratio('rulesEngine', 'breached')} times as fast as json-rules-engine (aim 50)`
);
console.log(`graded traced is ${ratio('rulesEngine', 'grade')} times as fast as json-rules-engine`);
console.log(
	`solved and graded untraced: ${ratio('rulesEngine', 'quick')} times as fast as json-rules-engine`
);
console.log(`graded untraced takes ${ratio('breached', 'handGrading')} times the loop by hand (aim 5)`);
console.log(
	`nine rules traced take ${ratio('nineRules', 'handSolving')} times their arithmetic by hand (aim 5)`
);
