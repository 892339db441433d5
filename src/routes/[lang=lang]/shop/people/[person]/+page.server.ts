import { error } from '@sveltejs/kit';
import { noPage } from '$lib/i18n';
import { changeRoles, doneOf, enterShop, giveSecret, openAccess, personOf, shopToday } from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	const entered = enterShop(event);
	const { app, lang } = event.locals;
	const person = personOf(app, event.params.person, lang);
	if (!person || person.erasedAt) error(404, noPage[lang].problem[404].title);
	const done = doneOf(event.url, ['added', 'roles', 'secret', 'opened']);
	return { ...entered, person, today: shopToday(app), done };
};

export const actions: Actions = {
	roles: (event) => changeRoles(event, event.params.person),
	secret: (event) => giveSecret(event, event.params.person),
	access: (event) => openAccess(event, event.params.person)
};
