import { error } from '@sveltejs/kit';
import { noPage } from '$lib/i18n';
import { eraseFromShop, personOf, requireRole } from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	requireRole(event, 'lead');
	const { app, lang } = event.locals;
	const person = personOf(app, event.params.person, lang);
	if (!person || person.erasedAt) error(404, noPage[lang].problem[404].title);
	return { person: { id: person.id, name: person.name } };
};

export const actions: Actions = { default: (event) => eraseFromShop(event, event.params.person) };
