import { beginWithDemoSheets, doneOf, enterShop, sheetList } from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => ({
	...enterShop(event),
	sheets: sheetList(event.locals.app, event.locals.lang),
	done: doneOf(event.url, ['demo'])
});

export const actions: Actions = { default: beginWithDemoSheets };
