import { daysBetween } from '$lib/learning';
import { dayOf, schemeAt } from '$lib/records';
import type { App } from '../app';
import type { Area } from './areas';

type What = 'continuity' | 'renewal' | 'reevaluation';

/** A last day that somebody has to keep, and whether notice of it is to be given already. */
export type DateToKeep = {
	readonly on: string;
	readonly what: What;
	readonly competency: string;
	readonly soon: boolean;
	readonly past: boolean;
};

/** The last good days of what a person is signed for, the next one first. */
export function datesOf(
	{ journal, now }: Pick<App, 'journal' | 'now'>,
	areas: readonly Area[]
): DateToKeep[] {
	const at = now().toISOString();
	const today = dayOf(journal.state, at);
	const notice = schemeAt(journal.state, at)?.limits.notice.firstDays ?? 0;
	return areas
		.flatMap(({ name, certification: { standing, validity } }) => {
			if (!validity || !['signed', 'continuity-lapsed'].includes(standing.state)) return [];
			const days: [What, string][] = [
				['continuity', validity.continuityDue],
				['renewal', validity.validUntil],
				['reevaluation', validity.reevaluationDue]
			];
			return days.map(([what, on]) => {
				const left = daysBetween(today, on);
				return { on, what, competency: name, soon: left >= 0 && left <= notice, past: left < 0 };
			});
		})
		.sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
}
