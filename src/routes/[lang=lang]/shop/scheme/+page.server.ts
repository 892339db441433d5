import { changeScheme, doneOf, enterShop, schemeView, shopToday } from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => ({
	...enterShop(event),
	scheme: schemeView(event.locals.app, event.locals.lang),
	today: shopToday(event.locals.app),
	done: doneOf(event.url, ['set'])
});

export const actions: Actions = { default: changeScheme };
