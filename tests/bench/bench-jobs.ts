import { makeTicket, type Breadth } from '../../src/lib/drills/index';
import { seeded } from '../../src/lib/drills/random';
import {
	DEMO_SHEETS,
	rightAnswers,
	solve,
	type Answers,
	type Job,
	type Plan,
	type Shop
} from '../../src/lib/engine/index';
import { breaking } from '../behaviour/drills/breaking';

export const shop: Shop = {
	on: '2026-11-25',
	sheets: Object.fromEntries(DEMO_SHEETS.map((sheet) => [sheet.id, sheet])),
	settings: {}
};

export type BenchJob = { readonly job: Job; readonly plan: Plan; readonly answers: Answers };

/** The plan's own answers with one in six demands broken, so that what fails is compared as well. */
function someBroken(plan: Plan, seed: number): Answers {
	const random = seeded(seed);
	const broken = plan.fields.flatMap(({ field, demands }) => {
		const answer = random.onceIn(6) ? breaking({ field }, random.pick(demands)) : undefined;
		return answer ? [[field, answer] as const] : [];
	});
	return { ...rightAnswers(plan), ...Object.fromEntries(broken) };
}

/** Tickets of every breadth in order of their seeds, with a set-up sheet handed in for each. */
export const benchJobs = (count: number): readonly BenchJob[] =>
	Array.from({ length: count }, (_, seed) => {
		const { job } = makeTicket({ seed, breadth: ((seed % 3) + 1) as Breadth, shop })!;
		const plan = solve(job, shop);
		return { job, plan, answers: someBroken(plan, seed) };
	});
