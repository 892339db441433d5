import type { Plan } from '$lib/engine';
import { stepsOf } from '../steps';
import type { DrillKind, DrillTicket, MadeDrill } from './kind';

/** Whether a plan calls for all that a kind needs. */
export const suits = ({ fields }: Plan, { needs }: DrillKind): boolean =>
	needs.every((id) => fields.some(({ field }) => field === id));

/** The drill that asks fields of the ticket's own plan and no others. */
export function ofPlan(kind: DrillKind, { plan }: DrillTicket): MadeDrill {
	const fields = plan.fields.filter(({ field }) => kind.asks.includes(field));
	return { fields, steps: stepsOf({ ...plan, fields }) };
}
