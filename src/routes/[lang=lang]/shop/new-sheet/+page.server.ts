import { newSheetForm, requireRole, saveSheetForm } from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	requireRole(event, 'lead');
	return newSheetForm(event.locals.app, event.locals.lang);
};

export const actions: Actions = { default: (event) => saveSheetForm(event, null) };
