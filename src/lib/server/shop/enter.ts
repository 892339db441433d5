import type { RequestEvent } from '@sveltejs/kit';
import { mayAct } from '$lib/records';
import { requireRole } from '../guard';

/**
 * Who reads the shop's own pages: its leads, and an auditor while the record is open to them.
 * @returns whether they may change anything there
 * @throws Redirect | HttpError 403
 */
export const enterShop = (event: RequestEvent): { mayChange: boolean } => {
	const who = requireRole(event, 'lead', 'auditor');
	const { app } = event.locals;
	return { mayChange: mayAct(app.journal.state, who.id, 'lead', app.now().toISOString()) };
};
