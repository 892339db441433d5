import { isDemo, nameOf, readerOf, recordNotices, shopName } from '$lib/server';
import type { LayoutServerLoad } from './$types';

// reading the path makes every move to another page ask the server, which then decides who may see it
export const load: LayoutServerLoad = ({ locals, cookies, url: { pathname: path } }) => {
	const { app, lang, who } = locals;
	return {
		lang,
		path,
		units: readerOf({ locals, cookies }).units.system,
		shop: { name: shopName(app, lang), demo: isDemo(app.journal.state) },
		who: who && { ...who, name: nameOf(app, who.id, lang) },
		notices: recordNotices(app, lang)
	};
};
