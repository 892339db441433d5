import type { Role } from '../shapes';
import type { State } from '../state';

/** The roles a person has at a moment: none once erased, none for an auditor outside the time opened. */
export function rolesAt(state: State, person: string, instant: string): readonly Role[] {
	const found = state.people.get(person);
	if (!found || found.erasedAt) return [];
	return found.roles.filter(
		(role) => role !== 'auditor' || (found.auditorUntil !== null && instant < found.auditorUntil)
	);
}

/** A lead may do what a supervisor may. */
export function mayAct(state: State, person: string, as: Role, instant: string): boolean {
	const roles = rolesAt(state, person, instant);
	return roles.includes(as) || (as === 'supervisor' && roles.includes('lead'));
}
