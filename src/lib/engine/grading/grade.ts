import type { Demand, Plan } from '../plan/plan';
import type { Severity } from '../rules/rule';
import type { FieldId } from '../setup/fields';
import type { Competency } from '../station';
import type { Answer, Answers } from './answer';
import { measure, type Measure } from './measure';

/** What the engine says of one answer under one rule. Data only; words are found at the edge. */
export type Finding = Measure & {
	readonly field: FieldId;
	readonly rule: string;
	readonly competency: Competency;
	readonly severity: Severity;
	readonly received: Answer | null;
	readonly expected: Demand['expectation'];
};

export type Findings = {
	/** One per field and rule, right ones too, in the order of the sheet. */
	readonly all: readonly Finding[];
	/** Breached rules: amber and red. */
	readonly breaches: readonly Finding[];
	readonly safetyStops: readonly Finding[];
	/** A safety stop overrides every other result. */
	readonly result: 'clear' | 'findings' | 'safety-stop';
};

/** Grades answers against a plan, for all its fields or only those asked. A field left empty is a breach. */
export function grade(plan: Plan, answers: Answers, asked?: readonly FieldId[]): Findings {
	const all: Finding[] = [];
	for (const { field, demands } of plan.fields) {
		if (asked && !asked.includes(field)) continue;
		const received = answers[field] ?? null;
		for (const { rule, competency, severity, expectation: expected } of demands) {
			const { zone, off, beyond, credit } = measure(received, expected);
			all.push({ field, rule, competency, severity, received, expected, zone, off, beyond, credit });
		}
	}
	const breaches = all.filter(({ zone }) => zone !== 'green');
	const safetyStops = breaches.filter(({ severity }) => severity === 'safety-stop');
	const result = safetyStops.length ? 'safety-stop' : breaches.length ? 'findings' : 'clear';
	return { all, breaches, safetyStops, result };
}

/** The plan's own answers: what a person who chooses right hands in. */
export const rightAnswers = (plan: Plan): Answers =>
	Object.fromEntries(plan.fields.map(({ field, answer }) => [field, answer]));
