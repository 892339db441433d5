import type { Handle } from '@sveltejs/kit';
import { getApp } from '../running-app';
import { isFromOwnPage, isKnownHost } from '../origin';
import { asBrowser } from './as-browser';
import { inOwnWords, plainPage } from './plain-page';
import { preferredLang } from './preferred-lang';
import { formFault } from './readable-form';
import { secure } from './security-headers';

/** Brings app and language, and turns away what no screen should ever see. Every answer leaves with its headers. */
export const arrive: Handle = async ({ event, resolve }) => {
	const { request, url, locals } = event;
	locals.app = await getApp();
	locals.lang = preferredLang(url.pathname, request.headers.get('accept-language'));
	locals.who = null;
	locals.lapsed = false;

	if (!isKnownHost(url, locals.app.settings.hosts)) return secure(plainPage(421, locals.lang));
	if (!isFromOwnPage(request, url)) return secure(plainPage(403, locals.lang));
	const fault = await formFault(request, url);
	if (fault) return secure(plainPage(fault, locals.lang));
	event.request = asBrowser(request);
	const { lang } = locals;
	const answer = await resolve(event, { transformPageChunk: ({ html }) => html.replace('%lang%', lang) });
	return secure(inOwnWords(answer, lang));
};
