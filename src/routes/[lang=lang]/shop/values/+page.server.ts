import { enterShop, readerOf, valueList } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => ({
	...enterShop(event),
	...valueList(event.locals.app, readerOf(event))
});
