import type { Demand, Plan } from '../plan/plan';
import type { FieldId } from '../setup/fields';
import type { Answers } from './answer';
import { measure } from './measure';

/** A demand of a plan that an answer does not meet. */
export type Breached = { readonly field: FieldId; readonly demand: Demand };

/**
 * The demands that these answers break, amber ones too, for all fields of the plan or only those asked: what `grade`
 * calls breaches, without a finding for each right answer. A field left empty breaks all that is demanded of it.
 */
export function breached(plan: Plan, answers: Answers, asked?: readonly FieldId[]): readonly Breached[] {
	const found: Breached[] = [];
	for (const { field, demands } of plan.fields) {
		if (asked && !asked.includes(field)) continue;
		const answer = answers[field];
		for (const demand of demands)
			if (measure(answer, demand.expectation).zone !== 'green') found.push({ field, demand });
	}
	return found;
}
