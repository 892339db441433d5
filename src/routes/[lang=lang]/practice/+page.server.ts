import { fail, redirect } from '@sveltejs/kit';
import { STATIONS } from '$lib/engine';
import { practice } from '$lib/i18n';
import { issuePractice, practiceInHand, requirePerson, typed } from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	const who = requirePerson(event);
	const inHand = practiceInHand(event.locals.app, who.id);
	return { inHand: inHand && !inHand.handedIn ? inHand.attempt : null };
};

export const actions: Actions = {
	default: async (event) => {
		const who = requirePerson(event);
		const { app, lang } = event.locals;
		const form = await event.request.formData();
		const breadth = ([1, 2, 3] as const).find((one) => String(one) === typed(form, 'breadth'));
		const station = typed(form, 'station');
		const known = station === 'whole' ? null : STATIONS.find((one) => one === station);
		if (!breadth || known === undefined) return fail(400, { problem: practice[lang].wrongChoice });
		const attempt = await issuePractice(app, who.id, { breadth, station: known });
		if (!attempt) return fail(409, { problem: practice[lang].noSheets });
		redirect(303, `/${lang}/practice/${attempt}`);
	}
};
