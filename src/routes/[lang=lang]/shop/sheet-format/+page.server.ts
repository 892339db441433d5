import { enterShop, formatView, readerOf } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => ({ ...enterShop(event), view: formatView(readerOf(event)) });
