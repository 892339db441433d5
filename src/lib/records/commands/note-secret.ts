import { accept, type Acting, type Decision } from '../decision';
import type { State } from '../state';
import { unlessPerson, unlessRole } from './guards';

/** Notes that somebody's PIN or passphrase was set: by themselves, or by a lead for them. */
export function noteSecret(state: State, { person }: { person: string }, acting: Acting): Decision {
	const refused =
		unlessPerson(state, person) ?? (person === acting.actor ? null : unlessRole(state, acting, 'lead'));
	return refused ?? accept({ event: 'person.secret-set', data: { person } });
}
