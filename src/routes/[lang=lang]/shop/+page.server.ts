import { enterShop, shopOverview } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => ({
	...enterShop(event),
	overview: shopOverview(event.locals.app, event.locals.lang)
});
