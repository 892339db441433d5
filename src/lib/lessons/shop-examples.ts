import { examplesByRule, exampleTickets, type RuleExample, type Shop } from '$lib/engine';
import type { LessonCheck } from './check';

type Worked = {
	readonly shop: Shop;
	/** The shop as text: a request brings it as a new object. */
	readonly of: string;
	readonly byRule: ReadonlyMap<string, readonly RuleExample[]>;
};

let last: Worked | undefined;

/** The examples of a shop by rule. Working them out takes a good part of a second, so the last shop's are kept. */
function workedOut(shop: Shop): Worked {
	if (last?.shop === shop) return last;
	const of = JSON.stringify(shop);
	last = last?.of === of ? { ...last, shop } : { shop, of, byRule: examplesByRule(exampleTickets(shop)) };
	return last;
}

/** What a rule expects on the example jobs of this shop. */
export const shopExamples = (rule: string, shop: Shop): readonly RuleExample[] =>
	workedOut(shop).byRule.get(rule) ?? [];

/** The example a check asks about; undefined for a check of reasons and where this shop has none. */
export function exampleOf(check: LessonCheck, shop: Shop): RuleExample | undefined {
	if (check.kind === 'reason') return undefined;
	const examples = shopExamples(check.rule, shop);
	return examples.find(({ id }) => id === check.example) ?? examples[0];
}

/** The checks that can be asked in this shop. */
export const askable = (checks: readonly LessonCheck[], shop: Shop) =>
	checks.filter((check) => check.kind === 'reason' || exampleOf(check, shop) !== undefined);
