import { fail, redirect } from '@sveltejs/kit';
import { DRILL_KINDS, PRACTICE_PARTS } from '$lib/drills';
import { practice, say } from '$lib/i18n';
import { issuePractice, practiceInHand, requirePerson, typed } from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	const who = requirePerson(event);
	const inHand = practiceInHand(event.locals.app, who.id);
	const { lang } = event.locals;
	return {
		inHand: inHand && !inHand.handedIn ? inHand.attempt : null,
		kinds: DRILL_KINDS.map(({ id, title, about }) => ({
			id,
			title: say(title, lang),
			about: say(about, lang)
		}))
	};
};

export const actions: Actions = {
	default: async (event) => {
		const who = requirePerson(event);
		const { app, lang } = event.locals;
		const form = await event.request.formData();
		const breadth = ([1, 2, 3] as const).find((one) => String(one) === typed(form, 'breadth'));
		const part = PRACTICE_PARTS.find((one) => one === typed(form, 'part'));
		if (!breadth || !part) return fail(400, { problem: practice[lang].wrongChoice });
		const attempt = await issuePractice(app, who.id, { breadth, part });
		if (!attempt) return fail(409, { problem: practice[lang].noSheets });
		redirect(303, `/${lang}/practice/${attempt}`);
	}
};
