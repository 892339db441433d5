import { error, fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { DRILL_KINDS } from '$lib/drills';
import { practice, refusalText, say, shell } from '$lib/i18n';
import { sheetView, ticketView } from '$lib/paper';
import {
	atNext,
	handInPracticeDrill,
	keepPractice,
	handedInView,
	ovenView,
	practiceDraft,
	readerOf,
	refused,
	requirePerson,
	shopInForce,
	stationView,
	typed,
	unreadable,
	withCheck,
	withHint,
	withMove,
	withPosted,
	type PracticeDraft
} from '$lib/server';
import { lessonTitles } from '../../people/lesson-titles';
import type { Actions, PageServerLoad } from './$types';

function inHand(event: RequestEvent) {
	const person = requirePerson(event).id;
	const { app, lang } = event.locals;
	const draft = practiceDraft(app, person, event.params.attempt ?? '');
	if (!draft) error(404, shell[lang].problem[404].title);
	return { person, app, lang, draft, reader: readerOf(event) };
}

export const load: PageServerLoad = (event) => {
	const { app, draft, reader } = inHand(event);
	const { shop } = shopInForce(app, draft.job.on);
	const sheet = shop.sheets[draft.job.coating];
	if (!sheet) throw new Error(`the sheet ${draft.job.coating} of a practice ticket is gone`);
	const kind = DRILL_KINDS.find(({ id }) => id === draft.part);
	return {
		short: kind ? say(kind.title, reader.lang) : null,
		ticket: ticketView(draft.job, shop, reader),
		sheet: sheetView(sheet, draft.job.on, reader),
		station: draft.handedIn ? null : stationView(draft, reader),
		outcome: draft.handedIn ? handedInView(draft, reader) : null,
		oven: draft.handedIn ? ovenView(draft, shop, reader) : null,
		titles: lessonTitles(reader.lang)
	};
};

/**
 * Reads the posted station, lets `go` take it on, keeps it and shows the page again. With an entry that cannot be read
 * the station stays as it is; a pressed hint or step does not wait for that.
 */
const working =
	(go: (draft: PracticeDraft, form: FormData) => PracticeDraft | undefined) =>
	async (event: RequestEvent) => {
		const { person, app, lang, draft, reader } = inHand(event);
		if (draft.handedIn) return fail(409, { problem: refusalText({ code: 'drill-settled' }, lang) });
		const form = await event.request.formData();
		const posted = withPosted(draft, form, reader);
		const next = posted && go(posted, form);
		if (!next) return fail(400, { problem: practice[lang].tampered });
		const stays = unreadable(posted) && !typed(form, 'move') && !typed(form, 'hint');
		await keepPractice(app, person, stays ? posted : next);
		if (stays) return fail(400, { problem: practice[lang].unreadable });
		redirect(303, `/${lang}/practice/${draft.attempt}#station`);
	};

export const actions: Actions = {
	check: working((draft, form) => {
		const pressed = typed(form, 'move');
		if (pressed) return withMove(draft, pressed, form);
		const hint = typed(form, 'hint');
		return hint ? withHint(draft, hint) : withCheck(draft);
	}),
	next: working(atNext),
	finish: async (event) => {
		const { person, app, lang, draft, reader } = inHand(event);
		if (draft.handedIn) return fail(409, { problem: refusalText({ code: 'drill-settled' }, lang) });
		const posted = withPosted(draft, await event.request.formData(), reader);
		if (!posted) return fail(400, { problem: practice[lang].tampered });
		await keepPractice(app, person, posted);
		if (unreadable(posted)) return fail(400, { problem: practice[lang].unreadable });
		const outcome = await handInPracticeDrill(event, posted);
		if (!outcome.ok) return refused(outcome);
		redirect(303, `/${lang}/practice/${draft.attempt}`);
	}
};
