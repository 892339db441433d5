import { ruleById, type Answer, type PlannedField } from '$lib/engine';
import type { Random } from '../../random';
import { demandOf, leading } from './demand';
import type { Case } from './the-case';

/** A cause is clearly likelier from this many times on; what is closer may stand either way. */
const CLEARLY = 1.5;

type Pair = readonly [first: string, then: string];

/** Pairs that are clearly one before the other, without those that follow from two others. */
function clearPairs(rules: readonly string[], chance: Case['after']): readonly Pair[] {
	const clear = (first: string, then: string) => chance[first]! >= CLEARLY * chance[then]!;
	return rules.flatMap((first) =>
		rules
			.filter((then) => first !== then && clear(first, then))
			.filter((then) => !rules.some((between) => clear(first, between) && clear(between, then)))
			.map((then): Pair => [first, then])
	);
}

/** Causes by how likely they are after the test; undefined where a wrong order would count against a safety stop. */
export function causeOrder({ causes, after }: Case): PlannedField | undefined {
	const rules = causes.map(({ rule }) => rule);
	const pairs = clearPairs(rules, after);
	const leaders = causes.filter(({ rule }) => pairs.some(([first]) => first === rule));
	if (!leaders.length || leaders.some(({ rule }) => ruleById(rule).severity === 'safety-stop'))
		return undefined;
	return {
		field: 'cause-order',
		offered: Object.fromEntries(causes.map(({ rule, title }) => [rule, title])),
		demands: leaders.map(({ rule, direction }) => {
			const way = leading(direction);
			return demandOf(rule, {
				kind: 'order',
				before: pairs.filter(([first]) => first === rule),
				...(way ? { leads: way } : {})
			});
		}),
		superseded: [],
		answer: { kind: 'order', options: rules.toSorted((one, other) => after[other]! - after[one]!) }
	};
}

/** How the causes lie at first: in some order that is not right yet, so that leaving it alone is no answer. */
export function firstOrder({ offered = {}, demands }: PlannedField, random: Random): Answer {
	const pairs = demands.flatMap(({ expectation }) =>
		expectation.kind === 'order' ? expectation.before : []
	);
	const ids = Object.keys(offered);
	const options = random.some(ids, ids.length);
	const right = pairs.every(([first, then]) => options.indexOf(first) < options.indexOf(then));
	return { kind: 'order', options: right ? options.toReversed() : options };
}
