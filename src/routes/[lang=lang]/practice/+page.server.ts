import { fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { BREADTHS, DRILL_KINDS, drillKind, PRACTICE_PARTS } from '$lib/drills';
import { practiceProblems, say, terms } from '$lib/i18n';
import { NEXT_JOB_DEFAULT, skills } from '$lib/learning';
import { chooseNext, drawNext, issuePractice, practiceInHand, requirePerson, typed } from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

/** How the program finds the next drill, by the name of the button. */
const WAYS = new Map([
	['chosen', chooseNext],
	['drawn', drawNext]
]);
const SUPPORTS = ['full', 'half', 'worked'] as const;

function chosenView(event: RequestEvent) {
	const { app, lang } = event.locals;
	const { part, breadth, support, skill, because, expected } = chooseNext(app, requirePerson(event).id);
	const kind = drillKind(part);
	const trained = skills.find(({ id }) => id === skill);
	return {
		title: kind ? say(kind.title, lang) : ((terms[lang].station as Record<string, string>)[part] ?? part),
		breadth,
		support,
		because,
		skill: trained ? say(trained.title, lang) : skill,
		inTen: Math.round(expected * 10)
	};
}

export const load: PageServerLoad = (event) => {
	const who = requirePerson(event);
	const inHand = practiceInHand(event.locals.app, who.id);
	const { lang } = event.locals;
	return {
		inHand: inHand && !inHand.handedIn ? inHand.attempt : null,
		chosen: chosenView(event),
		drawnFirst: NEXT_JOB_DEFAULT === 'random',
		breadths: BREADTHS,
		supports: SUPPORTS,
		part: PRACTICE_PARTS.find((one) => one === event.url.searchParams.get('part')) ?? 'whole',
		kinds: DRILL_KINDS.map(({ id, title, about }) => ({
			id,
			title: say(title, lang),
			about: say(about, lang)
		}))
	};
};

function wishOf(form: FormData) {
	const breadth = BREADTHS.find((one) => String(one) === typed(form, 'breadth'));
	const part = PRACTICE_PARTS.find((one) => one === typed(form, 'part'));
	const support = SUPPORTS.find((one) => one === typed(form, 'support'));
	return breadth && part && support ? { breadth, part, support } : undefined;
}

export const actions: Actions = {
	default: async (event) => {
		const who = requirePerson(event);
		const { app, lang } = event.locals;
		const form = await event.request.formData();
		const wish = form.has('next') ? WAYS.get(typed(form, 'next'))?.(app, who.id) : wishOf(form);
		if (!wish) return fail(400, { problem: practiceProblems[lang].wrongChoice });
		const attempt = await issuePractice(app, who.id, wish);
		if (!attempt) return fail(409, { problem: practiceProblems[lang].noSheets });
		redirect(303, `/${lang}/practice/${attempt}`);
	}
};
