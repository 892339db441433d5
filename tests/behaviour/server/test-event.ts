import type { Cookies, RequestEvent } from '@sveltejs/kit';
import type { App } from '$lib/server/app';
import { whoIs } from '$lib/server/who';

interface Wish {
	path?: string;
	method?: string;
	route?: string;
	form?: Record<string, string>;
	headers?: Record<string, string>;
	person?: string;
	cookies?: Map<string, string>;
	address?: string;
}

/** A request as kit would hand it to a hook, a load or an action. */
export const testEvent = (app: App, wish: Wish = {}): RequestEvent => {
	const jar = wish.cookies ?? new Map<string, string>();
	const cookies: Partial<Cookies> = {
		get: (name) => jar.get(name),
		set: (name, value) => void jar.set(name, value),
		delete: (name) => void jar.delete(name)
	};
	const url = new URL(wish.path ?? '/en', 'http://localhost:3000');
	const headers = { origin: url.origin, ...wish.headers };
	const body = wish.form && new URLSearchParams(wish.form);
	const method = wish.method ?? (wish.form ? 'POST' : 'GET');
	return {
		url,
		request: new Request(url, { method, headers, ...(body && { body }) }),
		cookies,
		route: { id: wish.route ?? null },
		params: { lang: 'en' },
		getClientAddress: () => wish.address ?? '192.0.2.7',
		locals: {
			app,
			lang: 'en',
			who: wish.person ? whoIs(app.journal.state, wish.person, app.now()) : null,
			lapsed: false
		}
	} as unknown as RequestEvent;
};
