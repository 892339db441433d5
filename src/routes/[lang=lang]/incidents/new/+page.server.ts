import { error, fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { incidents, noPage, refusalText } from '$lib/i18n';
import { dayOf } from '$lib/records';
import {
	blankReport,
	defectCatalogue,
	defectView,
	enterReport,
	isDefect,
	readerOf,
	readReport,
	refused,
	reportProblems,
	reportView,
	requireRole
} from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

/** The defect chosen in the address; undefined while none is. */
function chosen({ url, locals }: RequestEvent) {
	const id = url.searchParams.get('defect') ?? '';
	if (id && !isDefect(id)) error(404, noPage[locals.lang].problem[404].title);
	return isDefect(id) ? id : undefined;
}

export const load: PageServerLoad = (event) => {
	requireRole(event, 'supervisor');
	const { app, lang } = event.locals;
	const id = chosen(event);
	if (!id) return { defects: defectCatalogue(lang), defect: null, report: null };
	const draft = blankReport(id, dayOf(app.journal.state, app.now().toISOString()));
	return {
		defects: [],
		defect: defectView(id, lang),
		report: reportView(app, draft, {}, readerOf(event))
	};
};

export const actions: Actions = {
	default: async (event) => {
		requireRole(event, 'supervisor');
		const { app, lang } = event.locals;
		const id = chosen(event);
		const reader = readerOf(event);
		const draft = id && readReport(id, await event.request.formData(), reader);
		if (!draft) return fail(400, { problem: incidents[lang].tampered, report: null });
		const problems = reportProblems(app, draft, reader);
		const report = reportView(app, draft, problems, reader);
		if (Object.keys(problems).length) return fail(400, { problem: incidents[lang].correct, report });
		const { incident, outcome } = await enterReport(event, draft);
		if (!outcome.ok) {
			const { status, data } = refused(outcome);
			return fail(status, { problem: refusalText(data.refusal, lang), report });
		}
		redirect(303, `/${lang}/incidents/${incident}`);
	}
};
