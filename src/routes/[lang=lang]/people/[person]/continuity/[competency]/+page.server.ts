import { fail, redirect } from '@sveltejs/kit';
import { terms } from '$lib/i18n';
import type { Refusal } from '$lib/records';
import {
	competencyIn,
	confirm,
	continuityPage,
	nameOf,
	ownSecret,
	readJobs,
	refused,
	requireReaderOf,
	requireRole,
	typed
} from '$lib/server';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

type Untaken = NonNullable<Awaited<ReturnType<typeof ownSecret>>>;

function asked(event: RequestEvent | Parameters<PageServerLoad>[0]) {
	const { person, competency } = event.params;
	const who = requireRole(event, 'supervisor');
	requireReaderOf(event, person);
	return { who, person, competency: competencyIn(competency, event.locals.lang) };
}

export const load: PageServerLoad = (event) => {
	const { who, person, competency } = asked(event);
	const { app, lang } = event.locals;
	return {
		...continuityPage(app, person, competency, who.id),
		person,
		competency,
		name: nameOf(app, person, lang),
		title: terms[lang].station[competency]
	};
};

export const actions: Actions = {
	default: async (event) => {
		const { person, competency } = asked(event);
		const form = await event.request.formData();
		const { lines, jobs, ok } = readJobs(form);
		const sentBack = (status: number, why: { secret?: Untaken; refusal?: Refusal }) =>
			fail(status, { lines, ...why });
		if (!ok) return sentBack(400, {});
		const secret = await ownSecret(event, form, 'confirm-continuity');
		if (secret) return sentBack(secret.reason === 'wait' ? 429 : 403, { secret });
		const outcome = await confirm(event, person, { signOff: typed(form, 'signOff'), jobs });
		if (!outcome.ok) {
			const { status, data } = refused(outcome);
			return sentBack(status, data);
		}
		redirect(303, `/${event.locals.lang}/people/${person}?done=continuity#${competency}`);
	}
};
