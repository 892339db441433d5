import { mayAct } from '$lib/records';
import { incidentList, requireRole } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	const who = requireRole(event, 'supervisor', 'auditor');
	const { app, lang } = event.locals;
	return {
		incidents: incidentList(app, lang),
		mayReport: mayAct(app.journal.state, who.id, 'supervisor', app.now().toISOString())
	};
};
