import { accept, refuse, type Acting, type Decision } from '../decision';
import type { TextRef } from '../shapes';
import type { State } from '../state';
import { ifOwn, isCompetency, unlessRole } from './guards';

export type DecideIncident = { readonly incident: string; readonly evidence: TextRef } & (
	| { readonly cause: 'system'; readonly action: TextRef }
	| { readonly cause: 'skill-gap'; readonly competency: string; readonly rules: string[] }
);

/**
 * A supervisor decides, on evidence, why it happened: the way of working (an action follows) or a skill (a
 * refresher on exactly those rules follows). It suspends nobody.
 */
export function decideIncident(state: State, wish: DecideIncident, acting: Acting): Decision {
	const refused = unlessRole(state, acting, 'supervisor');
	if (refused) return refused;
	const found = state.incidents.get(wish.incident);
	if (!found) return refuse('unknown-incident', 'incident');
	const own = ifOwn(found.person, acting);
	if (own) return own;
	if (found.decided) return refuse('incident-decided', 'incident');

	const { incident, evidence } = wish;
	const { person } = found;
	if (wish.cause === 'system')
		return accept({
			event: 'incident.decided',
			data: { incident, person, cause: 'system', evidence, action: wish.action }
		});
	if (!isCompetency(wish.competency)) return refuse('unknown-competency', 'competency');
	const { competency, rules } = wish;
	return accept({
		event: 'incident.decided',
		data: { incident, person, cause: 'skill-gap', evidence, competency, rules }
	});
}
