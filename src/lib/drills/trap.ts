import type { Answers, Job, Plan, Shop, Text } from '$lib/engine';
import type { Random } from './random';

/** How much a ticket holds: 1 one thing to notice at most, 3 several and mixed parts. */
export type Breadth = 1 | 2 | 3;
export const BREADTHS: readonly Breadth[] = [1, 2, 3];

/** Something woven into a ticket that a person must notice. */
export type Trap = {
	readonly id: string;
	/** The rule at which overlooking it is found. */
	readonly rule: string;
	/** Least breadth of ticket it is woven into. */
	readonly from: Breadth;
	readonly title: Text;
	/** The job with the trap in it; undefined where it does not fit this job. */
	weave(job: Job, random: Random, shop: Shop): Job | undefined;
	/** What a person answers who overlooks it. */
	overlooked(plan: Plan, job: Job, shop: Shop): Answers;
};
