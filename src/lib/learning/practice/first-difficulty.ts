import type { JobBreadth } from './practised-job';

/** Teaching numbers, nobody publishes them: how often someone new to the skill is expected to get such a job right. */
const FIRST_EXPECTED: Record<JobBreadth, number> = { 1: 0.8, 2: 0.65, 3: 0.5 };

/** Difficulty of a job nobody has practised yet, in logits; a new person's skill is 0. */
export const firstDifficulty = (breadth: JobBreadth): number => Math.log(1 / FIRST_EXPECTED[breadth] - 1);
