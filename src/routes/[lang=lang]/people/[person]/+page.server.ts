import { fail, redirect } from '@sveltejs/kit';
import {
	admit,
	changeSignOff,
	personView,
	readerOf,
	refused,
	requirePerson,
	requireReaderOf,
	signAsSecond,
	typed
} from '$lib/server';
import { lessonTitles } from '../lesson-titles';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

export const load: PageServerLoad = (event) => {
	const { person } = event.params;
	const { id } = requireReaderOf(event, person);
	const { app, lang } = event.locals;
	return {
		...personView(app, person, id, readerOf(event)),
		titles: lessonTitles(lang),
		done: event.url.searchParams.get('done')
	};
};

type Act = typeof changeSignOff | typeof signAsSecond | typeof admit;

/** Does one act and goes back to the competency it was about, or says there why it was not done. */
const doing = (command: Act, done: string) => async (event: RequestEvent) => {
	requirePerson(event);
	const { person, lang } = event.params;
	const form = await event.request.formData();
	const area = typed(form, 'area');
	const kept = { area, typed: { change: typed(form, 'change'), reason: typed(form, 'reason') } };
	const outcome = await command(event, form, person);
	if (outcome.ok) redirect(303, `/${lang}/people/${person}?done=${done}#${encodeURIComponent(area)}`);
	if ('problem' in outcome) return fail(400, { ...kept, problem: outcome.problem });
	if ('secret' in outcome)
		return fail(outcome.secret.reason === 'wait' ? 429 : 403, { ...kept, secret: outcome.secret });
	const { status, data } = refused(outcome);
	return fail(status, { ...kept, ...data });
};

export const actions: Actions = {
	change: doing(changeSignOff, 'change'),
	second: doing(signAsSecond, 'second'),
	start: doing(admit, 'start')
};
