import { error, fail, redirect } from '@sveltejs/kit';
import { noPage, proving } from '$lib/i18n';
import { issueProving, refused, requirePerson, runView } from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	const { app, lang } = event.locals;
	const run = app.journal.state.attempts.runs.get(event.params.run);
	if (run?.person !== requirePerson(event).id) error(404, noPage[lang].problem[404].title);
	return { run: runView(app.journal.state, run, lang) };
};

export const actions: Actions = {
	default: async (event) => {
		const { lang } = event.locals;
		const issued = await issueProving(event, event.params.run);
		if (issued === 'unknown-run') error(404, noPage[lang].problem[404].title);
		if (issued === 'no-ticket') return fail(409, { problem: proving[lang].noTicket });
		if (!issued.outcome.ok) return refused(issued.outcome);
		redirect(303, `/${lang}/proving/${event.params.run}/${issued.drill}`);
	}
};
