import { dayOf, type Incident } from '$lib/records';
import type { App } from '../app';
import { readConditions } from './conditions';

/**
 * The day whose sheets and shop values an incident is judged by: that of the job, but none before the shop began to
 * keep any.
 */
export function judgedOn({ journal: { state } }: Pick<App, 'journal'>, incident: Incident): string {
	const on = readConditions(incident.conditions).on ?? dayOf(state, incident.reportedAt);
	const first = state.shop.founded?.on ?? on;
	return on < first ? first : on;
}
