import { addToShop, requireRole } from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	requireRole(event, 'lead');
};

export const actions: Actions = { default: addToShop };
