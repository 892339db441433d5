import { error, fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { noPage } from '$lib/i18n';
import { mayAct, type Incident, type Outcome, type Role } from '$lib/records';
import {
	close,
	decideGap,
	decideSystem,
	incidentView,
	readerOf,
	recordTest,
	requireRole,
	sentBack,
	type ToCorrect
} from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

function found(event: RequestEvent, ...roles: Role[]): Incident {
	requireRole(event, ...roles);
	const { app, lang } = event.locals;
	const incident = app.journal.state.incidents.get(event.params.id ?? '');
	if (!incident) error(404, noPage[lang].problem[404].title);
	return incident;
}

export const load: PageServerLoad = (event) => {
	const incident = found(event, 'supervisor', 'auditor');
	const { app, who } = event.locals;
	return {
		incident: incidentView(app, incident, readerOf(event)),
		mayAct: mayAct(app.journal.state, who?.id ?? '', 'supervisor', app.now().toISOString())
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
	const back = sentBack(form, await act(event, incident, form), lang);
	if (back) return fail(back.status, { at, ...back });
	redirect(303, `/${lang}/incidents/${incident.incident}#${SHOWN_AT[at]}`);
};

export const actions: Actions = {
	cause: doing('cause', recordTest),
	system: doing('system', decideSystem),
	gap: doing('gap', decideGap),
	close: doing('close', (event, incident, form) => close(event, incident, form, readerOf(event)))
};
