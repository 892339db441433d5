import type { Rule } from './rule';
import { curingRules } from './curing';
import { inspectionRules } from './inspection';
import { intakeRules } from './intake';
import { mixingRules } from './mixing';
import { preparationRules } from './preparation';
import { safetyRules } from './safety';
import { sprayingRules } from './spraying';

/** Every rule, in working order. */
export const RULES: readonly Rule[] = [
	...intakeRules,
	...preparationRules,
	...mixingRules,
	...sprayingRules,
	...curingRules,
	...inspectionRules,
	...safetyRules
];

const byId = new Map(RULES.map((rule) => [rule.id, rule]));

/** The rule of that id; an unknown one is a bug or a record of another engine version, so it throws. */
export function ruleById(id: string): Rule {
	const rule = byId.get(id);
	if (!rule) throw new RangeError(`no rule '${id}' in this engine version`);
	return rule;
}
