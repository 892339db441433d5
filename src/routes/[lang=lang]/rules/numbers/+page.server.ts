import { numbersView, readerOf, shopInForce } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = (event) =>
	numbersView(shopInForce(event.locals.app).shop, readerOf(event));
