import { accept, refuse, type Acting, type Decision } from '../decision';
import type { TextRef } from '../shapes';
import type { State } from '../state';
import { ifOwn, unlessRole } from './guards';

export interface CloseIncident {
	readonly incident: string;
	/** Jobs of the same sort looked at since the decision, and on how many the defect was back. */
	readonly jobsChecked: number;
	readonly repeats: number;
	readonly note: TextRef | null;
}

/** A supervisor closes an incident once what was decided has been done and has worked. */
export function closeIncident(state: State, wish: CloseIncident, acting: Acting): Decision {
	const refused = unlessRole(state, acting, 'supervisor');
	if (refused) return refused;
	const found = state.incidents.get(wish.incident);
	if (!found) return refuse('unknown-incident', 'incident');
	const own = ifOwn(found.person, acting);
	if (own) return own;
	if (found.closed) return refuse('incident-closed', 'incident');
	if (!found.decided) return refuse('incident-undecided', 'incident');
	if (found.decided.cause === 'skill-gap' && !found.refresherSigned)
		return refuse('refresher-open', 'incident');
	if (wish.repeats > 0) return refuse('defect-came-back', 'repeats');
	const { incident, jobsChecked, note } = wish;
	return accept({
		event: 'incident.closed',
		data: { incident, person: found.person, jobsChecked, repeats: 0, note }
	});
}
