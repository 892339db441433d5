import { accept, refuse, type Acting, type Decision } from '../decision';
import type { Role } from '../shapes';
import { rolesAt } from '../standing/roles';
import type { State } from '../state';
import { unlessPerson, unlessRole } from './guards';

/** Whether somebody else is a lead, so that the shop is not left without one. */
export const hasOtherLead = (state: State, person: string, now: string): boolean =>
	[...state.people.keys()].some((other) => other !== person && rolesAt(state, other, now).includes('lead'));

/** A lead changes what somebody may do. Auditors stay auditors and nobody becomes one. */
export function setRoles(state: State, wish: { person: string; roles: Role[] }, acting: Acting): Decision {
	const refused = unlessRole(state, acting, 'lead') ?? unlessPerson(state, wish.person);
	if (refused) return refused;
	const before = state.people.get(wish.person)?.roles ?? [];
	if (before.includes('auditor') || wish.roles.includes('auditor'))
		return refuse('malformed', 'roles', ['auditor-only']);
	if (
		before.includes('lead') &&
		!wish.roles.includes('lead') &&
		!hasOtherLead(state, wish.person, acting.now)
	)
		return refuse('last-lead', 'roles');
	return accept({ event: 'person.roles-set', data: { person: wish.person, roles: wish.roles } });
}
