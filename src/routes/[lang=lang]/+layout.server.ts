import { isDemo, nameOf, recordNotices, shopName } from '$lib/server';
import type { LayoutServerLoad } from './$types';

// reading the path makes every move to another page ask the server, which then decides who may see it
export const load: LayoutServerLoad = ({ locals: { app, lang, who }, url }) => ({
	lang,
	path: url.pathname,
	shop: { name: shopName(app, lang), demo: isDemo(app.journal.state) },
	who: who && { ...who, name: nameOf(app, who.id, lang) },
	notices: recordNotices(app, lang)
});
