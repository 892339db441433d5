import { error } from '@sveltejs/kit';
import { noPage } from '$lib/i18n';
import { nextSheetForm, requireRole, revisionsOf, saveSheetForm } from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	requireRole(event, 'lead');
	const { app, lang } = event.locals;
	const page = nextSheetForm(app, event.params.sheet, lang);
	if (!page) error(404, noPage[lang].problem[404].title);
	return { ...page, id: event.params.sheet };
};

export const actions: Actions = {
	default: (event) => {
		requireRole(event, 'lead');
		const { app, lang } = event.locals;
		if (!revisionsOf(app, event.params.sheet).length) error(404, noPage[lang].problem[404].title);
		return saveSheetForm(event, event.params.sheet);
	}
};
