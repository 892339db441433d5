import { ruleById, type Demand, type Expectation } from '$lib/engine';

/** A demand in the name of a rule that is there already. */
export function demandOf(rule: string, expectation: Expectation): Demand {
	const { competency, severity, authority } = ruleById(rule);
	return { rule, competency, severity, authority, expectation };
}

/** Which way a part goes wrong while its cause goes unfound; undefined where the rule knows no low and high. */
export const leading = (direction: 'low' | 'high' | 'wrong') =>
	direction === 'wrong' ? undefined : direction;
