import { field, STATIONS, type Plan, type Station } from '$lib/engine';
import type { DrillStep } from './step';

/** A station with its fields of a plan, its safety fields among them. */
const stepAt = (plan: Plan, station: Station): DrillStep => ({
	station,
	fields: plan.fields.map((planned) => planned.field).filter((id) => field(id).station === station),
	figures: []
});

/**
 * The way through a whole ticket: every station that has something to fill in. A job that may not start ends at intake.
 */
export const stepsOf = (plan: Plan): DrillStep[] =>
	(plan.decision === 'accept' ? STATIONS : (['intake'] as const))
		.map((station) => stepAt(plan, station))
		.filter(({ fields }) => fields.length > 0);
