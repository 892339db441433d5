import { seeded } from '../../src/lib/drills/random';
import { solve, type Job, type Plan, type Shop } from '../../src/lib/engine/index';
import { contradictions } from './contradictions';
import { limitsBroken } from './limits-kept';
import { issued, randomJob } from './random-job';
import { randomShop } from './random-shop';

/** Jobs that come to one shop; the seed of a run is the number of its shop. */
export const JOBS_PER_SHOP = 200;

export type Checked = {
	readonly decisions: Record<Plan['decision'], number>;
	/** Plans whose limits could not all be met. */
	conflicts: number;
	readonly rules: Set<string>;
	/** One line per job that went wrong, with shop and place. */
	readonly problems: string[];
};

export const nothingChecked = (): Checked => ({
	decisions: { accept: 0, ask: 0, refuse: 0 },
	conflicts: 0,
	rules: new Set(),
	problems: []
});

function checkJob(job: Job, shop: Shop, into: Checked): string[] {
	const plan = solve(job, shop);
	into.decisions[plan.decision] += 1;
	if (plan.conflicts.length) into.conflicts += 1;
	for (const { demands } of plan.fields) for (const { rule } of demands) into.rules.add(rule);
	return [...contradictions(plan), ...limitsBroken(job, shop, plan)];
}

function noting<Result>(where: string, into: Checked, work: () => Result): Result | undefined {
	try {
		return work();
	} catch (error) {
		into.problems.push(`${where}: ${String(error)}`);
		return undefined;
	}
}

/** Draws a shop and the jobs that come to it, solves each and looks for what is wrong with the plan. */
export function checkShop(seed: number, into: Checked): void {
	const random = seeded(seed);
	const shop = randomShop(random);
	const tickets = noting(`shop ${seed}`, into, () => issued(shop, random)) ?? [];
	for (let at = 0; at < JOBS_PER_SHOP; at += 1) {
		const where = `shop ${seed}, job ${at}`;
		const job = randomJob(shop, tickets, random);
		const found = noting(where, into, () => checkJob(job, shop, into));
		if (found?.length) into.problems.push(`${where}: ${found.join('; ')}`);
	}
}
