import { error } from '@sveltejs/kit';
import { noPage } from '$lib/i18n';
import { casePanel, practiceDraft, requirePerson } from '$lib/server';
import type { RequestHandler } from './$types';

export const GET: RequestHandler = (event) => {
	const person = requirePerson(event).id;
	const { app, lang } = event.locals;
	const draft = practiceDraft(app, person, event.params.attempt);
	const file = draft && casePanel(draft, event.url.searchParams.get('view') ?? '');
	if (!file) error(404, noPage[lang].problem[404].title);
	return new Response(file.content, {
		headers: { 'content-type': file.type, 'cache-control': 'private, max-age=604800' }
	});
};
