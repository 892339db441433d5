import { crewView, requireRole } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	requireRole(event, 'supervisor', 'auditor');
	return { crew: crewView(event.locals.app, event.locals.lang) };
};
