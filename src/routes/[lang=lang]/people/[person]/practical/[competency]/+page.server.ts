import { error, fail, redirect } from '@sveltejs/kit';
import { noPage } from '$lib/i18n';
import type { Refusal } from '$lib/records';
import {
	competencyIn,
	enterPractical,
	practicalBench,
	practicalPage,
	practicalSheet,
	readerOf,
	readPractical,
	refused,
	refusedAt,
	requireReaderOf,
	requireRole,
	typed,
	type ReadPractical
} from '$lib/server';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

/** The supervisor who is asking and the practical their page is about. */
function asked(event: RequestEvent | Parameters<PageServerLoad>[0]) {
	const { person, competency } = event.params;
	const who = requireRole(event, 'supervisor');
	requireReaderOf(event, person);
	return { who, about: { person, competency: competencyIn(competency, event.locals.lang) } };
}

export const load: PageServerLoad = (event) => {
	const { who, about } = asked(event);
	const coating = event.url.searchParams.get('coating') ?? '';
	return practicalPage(event.locals.app, { ...about, coating }, who.id, readerOf(event));
};

export const actions: Actions = {
	default: async (event) => {
		const { about } = asked(event);
		const { app, lang } = event.locals;
		const reader = readerOf(event);
		const form = await event.request.formData();
		const bench = practicalBench(app, about.competency, typed(form, 'coating'));
		if (!bench) error(400, noPage[lang].problem.other.title);
		const read = readPractical(form, bench, app.journal.state.shop.founded?.timeZone ?? 'UTC', reader);
		const coating = { id: bench.sheet.sheet, title: bench.title, revision: bench.sheet.revision };
		const sentBack = (status: number, entered: ReadPractical, why: { refusal?: Refusal } = {}) =>
			fail(status, { coating, sheet: practicalSheet(bench, reader, entered), ...why });
		if (!read.ok) return sentBack(400, read);
		const outcome = await enterPractical(event, about, read);
		if (outcome.ok) redirect(303, `/${lang}/people/${about.person}?done=practical#${about.competency}`);
		const { status, data } = refused(outcome);
		return sentBack(status, refusedAt(read, outcome.refusal), data);
	}
};
