import { fail, redirect } from '@sveltejs/kit';
import { crewAtTheDoor, demoPeople, isDemo, localPath, signInAs, typed } from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals: { app, lang }, url }) => {
	const crew = crewAtTheDoor(app, lang);
	const why = url.searchParams.get('why');
	return {
		crew,
		chosen: crew.find(({ id }) => id === url.searchParams.get('who')) ?? null,
		next: localPath(url.searchParams.get('next'), url, `/${lang}`),
		why: why === 'idle' || why === 'out' ? why : null,
		idleMinutes: app.settings.idleMinutes,
		demo: isDemo(app.journal.state) ? demoPeople : []
	};
};

export const actions: Actions = {
	default: async (event) => {
		const form = await event.request.formData();
		const person = typed(form, 'who');
		const secret = typed(form, 'secret');
		if (!crewAtTheDoor(event.locals.app, event.locals.lang).some(({ id }) => id === person))
			return fail(400, { reason: 'unknown' as const });
		if (!secret) return fail(400, { reason: 'empty' as const });
		const notTaken = await signInAs(event, person, secret);
		if (notTaken) return fail(notTaken.reason === 'wait' ? 429 : 403, notTaken);
		redirect(303, localPath(typed(form, 'next'), event.url, `/${event.locals.lang}`));
	}
};
