import { error, fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { incidents, refusalText, shell } from '$lib/i18n';
import type { Incident, Outcome, Role } from '$lib/records';
import {
	close,
	decideGap,
	decideSystem,
	incidentView,
	readerOf,
	recordTest,
	refused,
	requireRole,
	type ToCorrect
} from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

function found(event: RequestEvent, ...roles: Role[]): Incident {
	requireRole(event, ...roles);
	const { app, lang } = event.locals;
	const incident = app.journal.state.incidents.get(event.params.id ?? '');
	if (!incident) error(404, shell[lang].problem[404].title);
	return incident;
}

export const load: PageServerLoad = (event) => {
	const incident = found(event, 'supervisor', 'auditor');
	const { app, who } = event.locals;
	return {
		incident: incidentView(app, incident, readerOf(event)),
		mayAct: who?.roles.some((role) => role === 'supervisor' || role === 'lead') ?? false
	};
};

type Act = (
	event: RequestEvent,
	incident: Incident,
	form: FormData
) => Promise<Outcome | ToCorrect | 'tampered'>;

/** Where on the page to see what was done. */
const SHOWN_AT = { cause: 'results', system: 'decided', gap: 'decided', close: 'close' };

/** Does what a form asks, or sends it back with what was typed and what has to be put right. */
const doing = (at: keyof typeof SHOWN_AT, act: Act) => async (event: RequestEvent) => {
	const incident = found(event, 'supervisor');
	const { lang } = event.locals;
	const form = await event.request.formData();
	const done = await act(event, incident, form);
	if (done !== 'tampered' && 'ok' in done && done.ok)
		redirect(303, `/${lang}/incidents/${incident.incident}#${SHOWN_AT[at]}`);
	const kept = Object.fromEntries([...form].filter(([, value]) => typeof value === 'string')) as Record<
		string,
		string
	>;
	const back = { at, kept, rules: form.getAll('rules').map(String) };
	if (done === 'tampered') return fail(400, { ...back, problem: incidents[lang].tampered, problems: {} });
	if ('problems' in done)
		return fail(400, { ...back, problem: incidents[lang].correct, problems: done.problems });
	const { status, data } = refused(done);
	return fail(status, { ...back, problem: refusalText(data.refusal, lang), problems: {} });
};

export const actions: Actions = {
	cause: doing('cause', recordTest),
	system: doing('system', decideSystem),
	gap: doing('gap', decideGap),
	close: doing('close', (event, incident, form) => close(event, incident, form, readerOf(event)))
};
