import type { RequestEvent } from '@sveltejs/kit';
import { mayAct } from '$lib/records';
import { requireRole } from '../guard';

/**
 * Who reads the shop's own pages: its leads, and an auditor while the record is open to them.
 * @returns whether they may change anything there, and the time zone the shop's days are in
 * @throws Redirect | HttpError 403
 */
export const enterShop = (event: RequestEvent): { mayChange: boolean; timeZone: string | undefined } => {
	const who = requireRole(event, 'lead', 'auditor');
	const { app } = event.locals;
	const { state } = app.journal;
	return {
		mayChange: mayAct(state, who.id, 'lead', app.now().toISOString()),
		timeZone: state.shop.founded?.timeZone
	};
};
