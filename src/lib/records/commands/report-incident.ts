import { accept, refuse, type Acting, type Decision } from '../decision';
import type { EventData } from '../event';
import type { State } from '../state';
import { unlessPerson, unlessRole } from './guards';

export type ReportIncident = EventData<'incident.reported'>;

/** A supervisor puts down a defect that got out. Nothing follows for anybody until it is decided. */
export function reportIncident(state: State, wish: ReportIncident, acting: Acting): Decision {
	const refused = unlessRole(state, acting, 'supervisor') ?? unlessPerson(state, wish.person);
	if (refused) return refused;
	if (state.incidents.has(wish.incident)) return refuse('id-taken', 'incident');
	return accept({ event: 'incident.reported', data: wish });
}
