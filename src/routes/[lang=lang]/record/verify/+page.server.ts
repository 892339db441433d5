import { requireRole, verifyFile } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async (event) => {
	requireRole(event, 'lead', 'auditor');
	return { found: await verifyFile(event.locals.app, event.locals.lang) };
};
