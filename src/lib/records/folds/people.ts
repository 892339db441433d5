import { foldOf } from '../fold';
import type { Role, TextRef } from '../shapes';

export interface Person {
	readonly id: string;
	readonly name: TextRef;
	readonly lang: 'en' | 'es';
	readonly addedAt: string;
	roles: readonly Role[];
	/** When a PIN or passphrase was last set. */
	secretSetAt: string | null;
	/** End of an auditor's access; null for everybody else. */
	auditorUntil: string | null;
	erasedAt: string | null;
}

export type PeopleState = Map<string, Person>;

export const peopleFold = foldOf<PeopleState>(() => new Map(), {
	'person.added': (people, data, { at }) => {
		people.set(data.person, {
			id: data.person,
			name: data.name,
			lang: data.lang,
			addedAt: at,
			roles: data.roles,
			secretSetAt: null,
			auditorUntil: null,
			erasedAt: null
		});
	},
	'person.roles-set': (people, data) => {
		const person = people.get(data.person);
		if (person) person.roles = data.roles;
	},
	'person.secret-set': (people, data, { at }) => {
		const person = people.get(data.person);
		if (person) person.secretSetAt = at;
	},
	'person.erased': (people, data, { at }) => {
		const person = people.get(data.person);
		if (!person) return;
		person.erasedAt = at;
		person.roles = [];
	},
	'auditor.opened': (people, data) => {
		const person = people.get(data.person);
		if (person) person.auditorUntil = data.until;
	}
});
