import type { RequestEvent } from '@sveltejs/kit';
import { checkSecret } from './check-secret';
import { SESSION_COOKIE, sealSession, sessionCookieOptions, unsealSession } from './session-cookie';
import type { NotTaken } from './tried';
import { whoIs } from './who';

/** The sign-in a browser sent along, whether it still holds or not. */
const sentSession = ({ cookies, locals }: RequestEvent): string | null =>
	unsealSession(cookies.get(SESSION_COOKIE), locals.app.cookieKey);

/**
 * Signs a person in at this browser, in place of whoever was. The session gets a new id, so that one planted
 * beforehand is worth nothing.
 * @returns null when signed in
 */
export const signInAs = async (
	event: RequestEvent,
	person: string,
	secret: string
): Promise<NotTaken | null> => {
	const { app } = event.locals;
	const notTaken = await checkSecret(app, { person, secret, address: event.getClientAddress() }, 'sign-in');
	if (notTaken) return notTaken;
	if (!whoIs(app.journal.state, person, app.now())) return { reason: 'wrong' };
	const id = app.sessions.begin(person, app.now().getTime(), sentSession(event) ?? undefined);
	event.cookies.set(SESSION_COOKIE, sealSession(id, app.cookieKey), sessionCookieOptions(event.url));
	return null;
};

/** Ends the sign-in of this browser, if there is one. */
export const signOut = (event: RequestEvent): void => {
	const id = sentSession(event);
	if (id) event.locals.app.sessions.end(id);
	event.cookies.delete(SESSION_COOKIE, sessionCookieOptions(event.url));
};
