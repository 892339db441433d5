import { competencies, safety } from '$lib/learning';
import { accept, refuse, type Acting, type Decision } from '../decision';
import type { Role, TextRef } from '../shapes';
import type { State } from '../state';
import { unlessRole } from './guards';

export interface AddPerson {
	readonly person: string;
	readonly name: TextRef;
	readonly roles: Role[];
	readonly lang: 'en' | 'es';
}

/** A lead adds somebody to the shop. Everybody but an auditor starts training in all areas at once. */
export function addPerson(state: State, wish: AddPerson, acting: Acting): Decision {
	const refused = unlessRole(state, acting, 'lead');
	if (refused) return refused;
	if (state.people.has(wish.person)) return refuse('id-taken', 'person');
	// an auditor works on nothing they look at
	if (wish.roles.includes('auditor') && wish.roles.length > 1)
		return refuse('malformed', 'roles', ['auditor-only']);

	const { person, name, roles, lang } = wish;
	const added = { event: 'person.added', data: { person, name, roles, lang } } as const;
	if (roles.includes('auditor')) return accept(added);
	return accept(added, {
		event: 'training.started',
		data: { person, areas: [...competencies, safety].map(({ id }) => id), how: 'start-training' }
	});
}
