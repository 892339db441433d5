import { field, STATIONS, type FieldId, type Plan, type Station } from '$lib/engine';

/** Fields of a plan that are filled in at a station, its safety fields among them. */
export const fieldsAt = (plan: Plan, station: Station): FieldId[] =>
	plan.fields.map((planned) => planned.field).filter((id) => field(id).station === station);

/**
 * The way through a whole ticket: every station that has something to fill in. A job that may not start ends at intake.
 */
export const stationsOf = (plan: Plan): Station[] =>
	plan.decision === 'accept' ? STATIONS.filter((station) => fieldsAt(plan, station).length > 0) : ['intake'];
