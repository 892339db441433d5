import type { Handle } from '@sveltejs/kit';
import { SESSION_COOKIE, unsealSession } from '../session-cookie';
import { whoIs } from '../who';

/** Finds out who is asking. */
export const recognise: Handle = ({ event, resolve }) => {
	const { app } = event.locals;
	const cookie = event.cookies.get(SESSION_COOKIE);
	const id = unsealSession(cookie, app.cookieKey);
	const person = id && app.sessions.find(id, app.now().getTime());
	event.locals.who = person ? whoIs(app.journal.state, person, app.now()) : null;
	event.locals.lapsed = id !== null && event.locals.who === null;
	return resolve(event);
};
