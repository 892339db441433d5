import type { Lang } from '$lib/i18n';
import type { Incident } from '$lib/records';
import type { App } from '../app';
import { shopTime } from '../standing/shop-time';
import { defectName } from './defect-view';

/** What an incident waits for. */
export type IncidentState = 'undecided' | 'refresher' | 'to-sign' | 'to-close' | 'closed';

export function incidentState(
	{ journal }: Pick<App, 'journal'>,
	{ incident, decided, refresherSigned, closed }: Incident
): IncidentState {
	if (closed) return 'closed';
	if (!decided) return 'undecided';
	if (decided.cause === 'system' || refresherSigned) return 'to-close';
	const runs = journal.state.attempts.runs.values();
	const proven = [...runs].some((run) => run.incident === incident && run.concluded?.verdict === 'passed');
	return proven ? 'to-sign' : 'refresher';
}

/** Every incident, the latest first. No names: a list of defects is not a list of culprits. */
export const incidentList = (app: App, lang: Lang) =>
	[...app.journal.state.incidents.values()].reverse().map((incident) => ({
		id: incident.incident,
		defect: defectName(incident.defect, lang),
		job: incident.job,
		reported: shopTime(app, incident.reportedAt, lang),
		state: incidentState(app, incident)
	}));
