import type { Handle } from '@sveltejs/kit';
import { lapseDrills } from '$lib/records';

/** Before anybody is answered, proving drills that were left longer than announced are settled. */
export const settleLeft: Handle = async ({ event, resolve }) => {
	const { journal } = event.locals.app;
	if (journal.state.attempts.open.size > 0) await journal.act(lapseDrills, 'program');
	return resolve(event);
};
