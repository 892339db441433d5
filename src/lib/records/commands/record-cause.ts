import { accept, refuse, type Acting, type Decision } from '../decision';
import type { EventData } from '../event';
import type { State } from '../state';
import { unlessRole } from './guards';

/** A test made on the parts and what it showed; whose work it was follows from the incident. */
export type RecordCause = Omit<EventData<'incident.cause-recorded'>, 'person'>;

/** A supervisor enters what a test showed, while the cause is still open. */
export function recordCause(state: State, wish: RecordCause, acting: Acting): Decision {
	const refused = unlessRole(state, acting, 'supervisor');
	if (refused) return refused;
	const incident = state.incidents.get(wish.incident);
	if (!incident) return refuse('unknown-incident', 'incident');
	if (incident.decided) return refuse('incident-decided', 'incident');
	return accept({ event: 'incident.cause-recorded', data: { ...wish, person: incident.person } });
}
