import { fail, redirect } from '@sveltejs/kit';
import {
	competencyIn,
	ownSecret,
	readerOf,
	readSignature,
	refused,
	requireReaderOf,
	requireRole,
	sign,
	signOffPage
} from '$lib/server';
import { lessonTitles } from '../../../lesson-titles';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

/** Whoever may sign and what their page is about: a whole competency, or the refresher after one incident. */
function asked(event: RequestEvent | Parameters<PageServerLoad>[0], incident: string | null) {
	const { person, competency } = event.params;
	const who = requireRole(event, 'supervisor');
	requireReaderOf(event, person);
	const about = { person, competency: competencyIn(competency, event.locals.lang), incident };
	return { about, page: () => signOffPage(event.locals.app, about, who.id, readerOf(event)) };
}

export const load: PageServerLoad = (event) => ({
	...asked(event, event.url.searchParams.get('incident')).page(),
	titles: lessonTitles(event.locals.lang)
});

async function entered(event: RequestEvent) {
	const form = await event.request.formData();
	const read = readSignature(form);
	return { form, read, ...asked(event, read.chosen.incident || null) };
}

export const actions: Actions = {
	/** Nothing is entered yet: what would be signed is shown once more. */
	review: async (event) => {
		const { read, page } = await entered(event);
		const { chosen, problems } = read;
		const { against } = page();
		if (against) return refused({ ok: false, refusal: against });
		if (!read.ok) return fail(400, { chosen, problems });
		return { chosen, review: true };
	},
	sign: async (event) => {
		const { form, read, about, page } = await entered(event);
		const { chosen, problems } = read;
		if (!read.ok) return fail(400, { chosen, problems });
		if (chosen.seen !== page().seen) return fail(409, { chosen, changed: true });
		const secret = await ownSecret(event, form, about.incident ? 'sign-refresher' : 'sign-off');
		if (secret) return fail(secret.reason === 'wait' ? 429 : 403, { chosen, review: true, secret });
		const outcome = await sign(event, about, read);
		if (!outcome.ok) {
			const { status, data } = refused(outcome);
			return fail(status, { chosen, ...data });
		}
		const done = about.incident ? 'refresher' : 'signed';
		redirect(303, `/${event.locals.lang}/people/${about.person}?done=${done}#${about.competency}`);
	}
};
