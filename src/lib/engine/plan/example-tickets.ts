import type { DataSheet } from '../coatings/sheet';
import { EXAMPLE_JOBS, type ExampleJob } from '../job/examples';
import type { Job } from '../job/job';
import type { Expectation } from '../rules/expectation';
import type { Shop } from '../shop/shop';
import type { Text } from '../text';
import type { Plan } from './plan';
import { solve } from './solve';

/** An example job worked out with one of the shop's sheets. */
export type ExampleTicket = {
	readonly id: string;
	readonly name: Text;
	readonly sheet: DataSheet;
	readonly job: Job;
	readonly plan: Plan;
};

/** What a rule expects on one example ticket. */
export type RuleExample = ExampleTicket & { readonly expectation: Expectation };

function withSheet(example: ReturnType<ExampleJob['on']>, ticket: string, sheet: DataSheet): Job {
	const job = { ...example, ticket, coating: sheet.id };
	// a coating of one part comes without hardener
	return sheet.parts === 2
		? job
		: { ...job, shelf: { ...job.shelf, hardenerExpires: null, hardenerState: null } };
}

/** Every example job with every sheet of the shop, on the shop's day. None for a shop without sheets. */
export const exampleTickets = (shop: Shop): readonly ExampleTicket[] =>
	EXAMPLE_JOBS.flatMap(({ id, name, on }, at) =>
		Object.values(shop.sheets).map((sheet) => {
			const job = withSheet(on(shop.on), `E-${101 + at}`, sheet);
			return { id, name, sheet, job, plan: solve(job, shop) };
		})
	);

/** What each rule expects on the tickets whose plan holds its own demand, in the order of the tickets. */
export function examplesByRule(
	tickets: readonly ExampleTicket[]
): ReadonlyMap<string, readonly RuleExample[]> {
	const byRule = new Map<string, RuleExample[]>();
	for (const ticket of tickets)
		for (const { rule, expectation } of ticket.plan.fields.flatMap(({ demands }) => demands)) {
			const examples = byRule.get(rule) ?? [];
			examples.push({ ...ticket, expectation });
			byRule.set(rule, examples);
		}
	return byRule;
}
