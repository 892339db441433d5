import { error, json } from '@sveltejs/kit';
import { noPage } from '$lib/i18n';
import { filmMapAnswer, hasGunBench, practiceDraft, readerOf, requirePerson, shopInForce } from '$lib/server';
import type { RequestHandler } from './$types';

export const GET: RequestHandler = (event) => {
	const person = requirePerson(event).id;
	const { app, lang } = event.locals;
	const draft = practiceDraft(app, person, event.params.attempt);
	if (!draft || !hasGunBench(draft)) error(404, noPage[lang].problem[404].title);
	const { shop } = shopInForce(app, draft.job.on);
	const answer = filmMapAnswer(draft, shop, readerOf(event), event.url.searchParams);
	return json(answer, { status: answer.map ? 200 : 400, headers: { 'cache-control': 'no-store' } });
};
