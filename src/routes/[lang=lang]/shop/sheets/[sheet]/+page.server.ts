import { error } from '@sveltejs/kit';
import { noPage } from '$lib/i18n';
import { doneOf, enterShop, readerOf, revisionWanted, sheetPage } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	const entered = enterShop(event);
	const { app, lang } = event.locals;
	const wanted = revisionWanted(event.url);
	const sheet = wanted.ok && sheetPage(app, event.params.sheet, wanted.revision, readerOf(event));
	if (!sheet) error(404, noPage[lang].problem[404].title);
	return { ...entered, sheet, done: doneOf(event.url, ['saved']) };
};
