import { error, fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { noPage, proving } from '$lib/i18n';
import { movedOrder, readEntries } from '$lib/paper';
import { giveUpDrill } from '$lib/records';
import {
	act,
	askedOf,
	drillView,
	handInProving,
	keepProving,
	ownDrill,
	provingDraft,
	readerOf,
	refused,
	runView,
	typed
} from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

function inHand(event: RequestEvent) {
	const { app, lang } = event.locals;
	const drill = ownDrill(event);
	const run = drill && app.journal.state.attempts.runs.get(drill.run);
	if (!drill || !run) error(404, noPage[lang].problem[404].title);
	return { app, lang, drill, run, words: proving[lang], runPath: `/${lang}/proving/${drill.run}` };
}

/** The drill in hand for whoever does something about it; once it is settled, nobody does. */
function openDrill(event: RequestEvent) {
	const found = inHand(event);
	if (found.drill.settled) error(409, found.words.settled);
	return found;
}

export const load: PageServerLoad = (event) => {
	const { app, lang, drill, run, runPath } = inHand(event);
	if (drill.settled) redirect(303, runPath);
	const { competency } = runView(app.journal.state, run, lang);
	return { ...drillView(event, drill), competency, reviewing: event.url.searchParams.has('review') };
};

/** Keeps what was posted; a moved step counts as part of it. Answers where to go on. */
async function keep(event: RequestEvent, goOn: string) {
	const { app, drill, words, runPath } = openDrill(event);
	const form = await event.request.formData();
	const entries = readEntries(askedOf(drill), form, readerOf(event));
	if (!entries) return fail(400, { problem: words.tampered });
	const pressed = typed(form, 'move');
	const moved = pressed ? movedOrder(pressed, form) : undefined;
	if (pressed && (!moved || !askedOf(drill).includes(moved.field)))
		return fail(400, { problem: words.tampered });
	if (moved) entries[moved.field] = { answer: { kind: 'order', options: moved.options } };
	await keepProving(app, drill.person, drill.drill, entries);
	const unreadable = Object.values(entries).some(({ problem }) => problem);
	if (unreadable && !moved) return fail(400, { problem: words.unreadableStop });
	redirect(303, moved ? `${runPath}/${drill.drill}` : goOn);
}

export const actions: Actions = {
	review: (event) => keep(event, `${event.url.pathname}?review`),
	save: (event) => keep(event, `/${event.locals.lang}/proving/${event.params.run}`),
	handin: async (event) => {
		const { app, drill, words, runPath } = openDrill(event);
		const draft = provingDraft(app, drill.person, drill.drill);
		if (Object.values(draft).some(({ problem }) => problem))
			return fail(400, { problem: words.unreadableStop });
		const outcome = await handInProving(event, drill, draft);
		if (!outcome.ok) return refused(outcome);
		redirect(303, runPath);
	},
	giveup: async (event) => {
		const { drill, words, runPath } = openDrill(event);
		const form = await event.request.formData();
		if (typed(form, 'sure') !== 'yes') return fail(400, { problem: words.giveUpTick });
		const outcome = await act(event, giveUpDrill, { drill: drill.drill });
		if (!outcome.ok) return refused(outcome);
		redirect(303, runPath);
	}
};
