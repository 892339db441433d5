import { RULES } from '../../src/lib/engine/index';

/** A made-up person: the chance of keeping each rule, every time anew and whatever else happens. */
export type Learner = { readonly name: string; readonly keeps: (rule: string) => number };

const alike = (chance: number): Learner => ({ name: chance.toFixed(3), keeps: () => chance });

/** Every eighth rule in working order: some in each competency. */
const weak = new Set(RULES.filter((_, at) => at % 8 === 0).map(({ id }) => id));

export const LEARNERS: readonly Learner[] = [
	...[0.8, 0.9, 0.95, 0.98, 0.99, 0.995].map(alike),
	{ name: 'uneven', keeps: (rule) => (weak.has(rule) ? 0.8 : 0.995) }
];
