import { error, fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { drillKind } from '$lib/drills';
import { noPage, practiceProblems, refusalText, say } from '$lib/i18n';
import { sheetView, ticketView } from '$lib/paper';
import {
	atNext,
	gunBenchView,
	handInPracticeDrill,
	keepPractice,
	handedInView,
	hasGunBench,
	ovenView,
	practiceDraft,
	readerOf,
	readWorked,
	refused,
	requirePerson,
	shopInForce,
	stepView,
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
	if (!draft) error(404, noPage[lang].problem[404].title);
	return { person, app, lang, draft, reader: readerOf(event) };
}

export const load: PageServerLoad = (event) => {
	const { app, draft, reader } = inHand(event);
	const { shop } = shopInForce(app, draft.job.on);
	const sheet = shop.sheets[draft.job.coating];
	if (!sheet) throw new Error(`the sheet ${draft.job.coating} of a practice ticket is gone`);
	const kind = drillKind(draft.part);
	return {
		short: kind ? say(kind.title, reader.lang) : null,
		ticket: ticketView(draft.job, shop, reader),
		sheet: sheetView(sheet, draft.job.on, reader),
		worked: draft.support === 'worked',
		counted: kind?.tells === 'count',
		gun: hasGunBench(draft) && !draft.handedIn ? gunBenchView(draft, shop, reader, draft.flow) : null,
		step: draft.handedIn ? null : stepView(draft, reader),
		outcome: draft.handedIn ? handedInView(draft, reader) : null,
		oven: draft.handedIn ? ovenView(draft, shop, reader) : null,
		titles: lessonTitles(reader.lang)
	};
};

/**
 * Reads the posted page, lets `go` take it on, keeps it and shows the page again. With an entry that cannot be read the
 * page stays as it is; a pressed hint or move does not wait for that.
 */
const working =
	(go: (draft: PracticeDraft, form: FormData) => PracticeDraft | undefined) =>
	async (event: RequestEvent) => {
		const { person, app, lang, draft, reader } = inHand(event);
		if (draft.handedIn) return fail(409, { problem: refusalText({ code: 'drill-settled' }, lang) });
		const form = await event.request.formData();
		const posted = withPosted(draft, form, reader);
		const next = posted && go(posted, form);
		if (!next) return fail(400, { problem: practiceProblems[lang].tampered });
		const stays = unreadable(posted) && !typed(form, 'move') && !typed(form, 'hint');
		await keepPractice(app, person, stays ? posted : next);
		if (stays) return fail(400, { problem: practiceProblems[lang].unreadable });
		redirect(303, `/${lang}/practice/${draft.attempt}#step`);
	};

export const actions: Actions = {
	check: working((draft, form) => {
		const pressed = typed(form, 'move');
		if (pressed) return withMove(draft, pressed, form);
		if (typed(form, 'draw')) return draft;
		const hint = typed(form, 'hint');
		return hint ? withHint(draft, hint) : withCheck(draft);
	}),
	next: working(atNext),
	read: async (event) => {
		const { person, app, lang, draft } = inHand(event);
		if (draft.support !== 'worked') return fail(409, { problem: practiceProblems[lang].tampered });
		await readWorked(app, person, draft);
		redirect(303, `/${lang}/practice`);
	},
	finish: async (event) => {
		const { person, app, lang, draft, reader } = inHand(event);
		if (draft.support === 'worked') return fail(409, { problem: practiceProblems[lang].tampered });
		if (draft.handedIn) return fail(409, { problem: refusalText({ code: 'drill-settled' }, lang) });
		const posted = withPosted(draft, await event.request.formData(), reader);
		if (!posted) return fail(400, { problem: practiceProblems[lang].tampered });
		await keepPractice(app, person, posted);
		if (unreadable(posted)) return fail(400, { problem: practiceProblems[lang].unreadable });
		const outcome = await handInPracticeDrill(event, posted);
		if (!outcome.ok) {
			// worded here: the words of all refusals are not sent along with the page
			const { status, data } = refused(outcome);
			return fail(status, { problem: refusalText(data.refusal, lang) });
		}
		redirect(303, `/${lang}/practice/${draft.attempt}`);
	}
};
