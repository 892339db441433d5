import { doneOf, enterShop, peopleList } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => ({
	...enterShop(event),
	people: peopleList(event.locals.app, event.locals.lang),
	done: doneOf(event.url, ['erased'])
});
