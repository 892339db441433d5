import { error } from '@sveltejs/kit';
import { noPage } from '$lib/i18n';
import { importFile, requireRole, revisionsOf, sheetIn, shopToday } from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	requireRole(event, 'lead');
	const { app, lang } = event.locals;
	const wanted = event.url.searchParams.get('sheet');
	const newest = wanted === null ? undefined : revisionsOf(app, wanted).at(-1);
	if (wanted !== null && !newest) error(404, noPage[lang].problem[404].title);
	return {
		into: newest ? { id: newest.sheet, title: sheetIn(newest).title, revision: newest.revision } : null,
		today: shopToday(app)
	};
};

export const actions: Actions = { default: importFile };
