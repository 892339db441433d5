import { doneOf, enterShop, readerOf, setGear, shopToday, valueList } from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => ({
	...enterShop(event),
	gear: valueList(event.locals.app, readerOf(event)).gear,
	today: shopToday(event.locals.app),
	done: doneOf(event.url, ['set'])
});

export const actions: Actions = { default: setGear };
