import { bench, describe } from 'vitest';
import { makeTicket, type Breadth } from '$lib/drills';
import { DEMO_SHEETS, grade, mayStart, rightAnswers, solve, type Job, type Shop } from '$lib/engine';

const shop: Shop = {
	on: '2026-11-25',
	sheets: Object.fromEntries(DEMO_SHEETS.map((sheet) => [sheet.id, sheet])),
	settings: {}
};
const jobs = Array.from(
	{ length: 200 },
	(_, seed) => makeTicket({ seed, breadth: ((seed % 3) + 1) as Breadth, shop })?.job
).filter((job): job is Job => job !== undefined);
const plans = jobs.map((job) => solve(job, shop));

/* Ratios within this one run; nothing here is a limit. Each round is 200 jobs. */
describe('200 jobs', () => {
	bench('asked whether they may start', () => jobs.forEach((job) => mayStart(job, shop)));
	bench('solved', () => jobs.forEach((job) => solve(job, shop)));
	bench('graded', () => plans.forEach((plan) => grade(plan, rightAnswers(plan))));
	bench('made', () => {
		for (let seed = 0; seed < 200; seed += 1)
			makeTicket({ seed, breadth: ((seed % 3) + 1) as Breadth, shop });
	});
});
