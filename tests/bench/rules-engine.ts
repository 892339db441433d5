import { Engine, Rule, type ConditionProperties } from 'json-rules-engine';
import { limits, type Answer, type Demand, type FieldId } from '../../src/lib/engine/index';
import type { BenchJob } from './bench-jobs';

type Options = readonly string[];

/** The same demand in the other engine's words: its own operators for numbers and choices, the rest as custom ones. */
function conditionsOf(fact: FieldId, { expectation }: Demand): ConditionProperties[] {
	const window = limits(expectation);
	if (window)
		return [
			...(window.min > -Infinity ? [{ fact, operator: 'greaterThanInclusive', value: window.min }] : []),
			...(window.max < Infinity
				? [{ fact, operator: window.open ? 'lessThan' : 'lessThanInclusive', value: window.max }]
				: [])
		];
	switch (expectation.kind) {
		case 'one-of':
			return [{ fact, operator: 'in', value: expectation.options }];
		case 'none-of':
			return [{ fact, operator: 'noneOf', value: expectation.options }];
		case 'all-of':
			return [
				{ fact, operator: 'allOf', value: expectation.options },
				{ fact, operator: 'noneOf', value: expectation.not ?? [] }
			];
		case 'order':
			return [{ fact, operator: 'inOrder', value: expectation.before }];
		default:
			throw new Error(`no condition for ${expectation.kind}`);
	}
}

const factOf = (answer: Answer) =>
	answer.kind === 'quantity' ? answer.value : answer.kind === 'choice' ? answer.option : answer.options;

/** An engine with one rule per demand of the plan, and the answers as its facts. Making it is no part of what is timed. */
export function rulesEngineFor({ plan, answers }: BenchJob) {
	const rules = plan.fields.flatMap(({ field, demands }) =>
		demands.map(
			(demand) =>
				new Rule({
					conditions: { all: conditionsOf(field, demand) },
					event: { type: demand.rule }
				})
		)
	);
	const engine = new Engine(rules);
	engine.addOperator<string | Options, Options>('noneOf', (given, barred) =>
		typeof given === 'string' ? !barred.includes(given) : !given.some((one) => barred.includes(one))
	);
	engine.addOperator<Options, Options>('allOf', (given, wanted) =>
		wanted.every((one) => given.includes(one))
	);
	engine.addOperator<Options, readonly (readonly [string, string])[]>('inOrder', (given, before) =>
		before.every(([first, then]) => given.includes(first) && given.indexOf(first) < given.indexOf(then))
	);
	const facts = Object.fromEntries(Object.entries(answers).map(([field, answer]) => [field, factOf(answer)]));
	return {
		/** The rules whose conditions do not hold. */
		async failing(): Promise<readonly string[]> {
			const { failureResults } = await engine.run(facts);
			return failureResults.map(({ event }) => event!.type);
		},
		evaluate: () => engine.run(facts)
	};
}
