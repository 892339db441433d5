import { error } from '@sveltejs/kit';
import { noPage } from '$lib/i18n';
import { enterShop, revisionWanted, sheetFile } from '$lib/server';
import type { RequestHandler } from './$types';

export const GET: RequestHandler = (event) => {
	enterShop(event);
	const { app, lang } = event.locals;
	const wanted = revisionWanted(event.url);
	const file = wanted.ok && sheetFile(app, event.params.sheet, wanted.revision);
	if (!file) error(404, noPage[lang].problem[404].title);
	return new Response(file.text, {
		headers: {
			'content-type': 'application/json; charset=utf-8',
			'content-disposition': `attachment; filename="${file.name}"`
		}
	});
};
