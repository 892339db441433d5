import { examplesFor, exampleTickets, type ExampleTicket, type RuleExample, type Shop } from '$lib/engine';
import type { LessonCheck } from './check';

let last: { readonly of: string; readonly tickets: readonly ExampleTicket[] } | undefined;

/** The example tickets of a shop. Working them out takes a good part of a second, so the last shop's are kept. */
function ticketsOf(shop: Shop): readonly ExampleTicket[] {
	const of = JSON.stringify(shop);
	if (last?.of !== of) last = { of, tickets: exampleTickets(shop) };
	return last.tickets;
}

/** What a rule expects on the example jobs of this shop. */
export const shopExamples = (rule: string, shop: Shop): readonly RuleExample[] =>
	examplesFor(rule, ticketsOf(shop));

/** The example a check asks about; undefined for a check of reasons and where this shop has none. */
export function exampleOf(check: LessonCheck, shop: Shop): RuleExample | undefined {
	if (check.kind === 'reason') return undefined;
	const examples = shopExamples(check.rule, shop);
	return examples.find(({ id }) => id === check.example) ?? examples[0];
}

/** The checks that can be asked in this shop. */
export const askable = (checks: readonly LessonCheck[], shop: Shop) =>
	checks.filter((check) => check.kind === 'reason' || exampleOf(check, shop) !== undefined);
