import { checksView, readerOf, shopInForce } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = (event) =>
	checksView(shopInForce(event.locals.app).shop, readerOf(event));
