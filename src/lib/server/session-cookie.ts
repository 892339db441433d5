import { createHmac, timingSafeEqual } from 'node:crypto';

/** Name of the cookie that carries a sign-in. */
export const SESSION_COOKIE = 'witness_sign_in';

const signature = (id: string, key: Buffer): string =>
	createHmac('sha256', key).update(`sign-in:${id}`).digest('base64url');

/** The cookie's value: the id and proof that this program gave it out. */
export const sealSession = (id: string, key: Buffer): string => `${id}.${signature(id, key)}`;

/** The id inside a cookie's value, or null when this program did not give it out. */
export const unsealSession = (value: string | undefined, key: Buffer): string | null => {
	const [id, given, ...rest] = (value ?? '').split('.');
	if (!id || !given || rest.length) return null;
	const sent = Buffer.from(given);
	const right = Buffer.from(signature(id, key));
	return sent.length === right.length && timingSafeEqual(sent, right) ? id : null;
};

/** Out of reach of scripts, not sent from other sites, gone with the browser; Secure wherever the connection is. */
export const sessionCookieOptions = (url: URL) => ({
	path: '/',
	httpOnly: true,
	sameSite: 'lax' as const,
	secure: url.protocol === 'https:'
});
