import { incidentList, requireRole } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	const who = requireRole(event, 'supervisor', 'auditor');
	return {
		incidents: incidentList(event.locals.app, event.locals.lang),
		mayReport: who.roles.some((role) => role === 'supervisor' || role === 'lead')
	};
};
