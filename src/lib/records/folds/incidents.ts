import type { EventData } from '../event';
import { foldOf } from '../fold';

type By = { readonly by: string; readonly at: string };

export interface Incident extends EventData<'incident.reported'> {
	readonly reportedBy: string;
	readonly reportedAt: string;
	tests: (EventData<'incident.cause-recorded'> & By)[];
	decided: (EventData<'incident.decided'> & By) | null;
	/** The proving run that showed the skill again, once it was signed for. */
	refresherSigned: (EventData<'refresher.signed'> & { readonly at: string }) | null;
	closed: (EventData<'incident.closed'> & By) | null;
}

export type IncidentsState = Map<string, Incident>;

export const incidentsFold = foldOf<IncidentsState>(() => new Map(), {
	'incident.reported': (incidents, data, { at, actor }) => {
		incidents.set(data.incident, {
			...data,
			reportedBy: actor,
			reportedAt: at,
			tests: [],
			decided: null,
			refresherSigned: null,
			closed: null
		});
	},
	'incident.cause-recorded': (incidents, data, { at, actor }) => {
		incidents.get(data.incident)?.tests.push({ ...data, by: actor, at });
	},
	'incident.decided': (incidents, data, { at, actor }) => {
		const decided = incidents.get(data.incident);
		if (decided) decided.decided = { ...data, by: actor, at };
	},
	'refresher.signed': (incidents, data, { at }) => {
		const proven = incidents.get(data.incident);
		if (proven) proven.refresherSigned = { ...data, at };
	},
	'incident.closed': (incidents, data, { at, actor }) => {
		const closed = incidents.get(data.incident);
		if (closed) closed.closed = { ...data, by: actor, at };
	}
});
