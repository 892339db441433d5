import type { Lang } from '$lib/i18n';
import { rolesAt, type Person } from '$lib/records';
import type { App } from '../../app';
import { secretKindFor } from '../../secret-kind';
import { nameOf } from '../../shown-text';

/** One person of the record as the lead's screen shows them; days are in the shop's own time. */
const personLine = (app: App, person: Person, lang: Lang) => ({
	id: person.id,
	name: nameOf(app, person.id, lang),
	roles: person.roles,
	lang: person.lang,
	/** Whether what they sign in with is a PIN. */
	pin: secretKindFor(person.roles) === 'pin',
	secretSetAt: app.secrets.has(person.id) ? person.secretSetAt : null,
	erasedAt: person.erasedAt,
	auditor: person.roles.includes('auditor') && {
		open: rolesAt(app.journal.state, person.id, app.now().toISOString()).includes('auditor'),
		until: person.auditorUntil
	}
});

export type PersonLine = ReturnType<typeof personLine>;

/** Everybody in the record by name, the erased last. */
export const peopleList = (app: App, lang: Lang): PersonLine[] =>
	[...app.journal.state.people.values()]
		.map((person) => personLine(app, person, lang))
		.sort(
			(a, b) =>
				Number(Boolean(a.erasedAt)) - Number(Boolean(b.erasedAt)) || a.name.localeCompare(b.name, lang)
		);

/** One person of the record; undefined for an id that is nobody's. */
export const personOf = (app: App, id: string, lang: Lang): PersonLine | undefined => {
	const person = app.journal.state.people.get(id);
	return person && personLine(app, person, lang);
};
