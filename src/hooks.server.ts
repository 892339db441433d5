import { building } from '$app/environment';
import { sequence } from '@sveltejs/kit/hooks';
import type { ServerInit } from '@sveltejs/kit';
import { announce, arrive, getApp, leadOn, recognise, reportFault, settleLeft } from '$lib/server';

/** Opens the data folder before the first request, so that a program that cannot work does not start. */
export const init: ServerInit = async () => {
	if (building) return;
	const app = await getApp();
	// not among node's own events, which is all its type knows
	(process as NodeJS.EventEmitter).once('sveltekit:shutdown', () => app.close());
	announce(app);
};

export const handle = sequence(arrive, settleLeft, recognise, leadOn);
export const handleError = reportFault;
