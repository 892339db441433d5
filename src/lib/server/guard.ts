import { error, redirect, type RequestEvent } from '@sveltejs/kit';
import { noPage } from '$lib/i18n';
import { mayAct, type Role } from '$lib/records';
import type { Who } from './who';

/**
 * The person signed in. Nobody: reading leads to the sign-in page and back here afterwards; a form is refused,
 * since what was typed would be lost on that way without a word.
 * @throws Redirect | HttpError 401
 */
export const requirePerson = ({ locals, request, url }: RequestEvent): Who => {
	if (locals.who) return locals.who;
	if (request.method !== 'GET' && request.method !== 'HEAD')
		error(401, noPage[locals.lang].problem[401].title);
	const query = new URLSearchParams({ next: url.pathname + url.search });
	if (locals.lapsed) query.set('why', 'idle');
	redirect(303, `/${locals.lang}/sign-in?${query}`);
};

/**
 * The person signed in, if they may act in one of the roles (a lead may do what a supervisor may). For an auditor
 * name that role where reading is meant, and leave it out where something is done.
 * @throws Redirect | HttpError 401 | 403
 */
export const requireRole = (event: RequestEvent, ...roles: readonly Role[]): Who => {
	const who = requirePerson(event);
	const { app, lang } = event.locals;
	const now = app.now().toISOString();
	if (!roles.some((role) => mayAct(app.journal.state, who.id, role, now)))
		error(403, noPage[lang].problem[403].title);
	return who;
};
