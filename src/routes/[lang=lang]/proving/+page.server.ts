import { redirect } from '@sveltejs/kit';
import { randomUUID } from 'node:crypto';
import { openRun } from '$lib/records';
import { act, provingView, refused, requirePerson, typed } from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	requirePerson(event);
	return provingView(event);
};

export const actions: Actions = {
	default: async (event) => {
		requirePerson(event);
		const form = await event.request.formData();
		const run = randomUUID();
		const incident = typed(form, 'incident') || null;
		const outcome = await act(event, openRun, { run, competency: typed(form, 'competency'), incident });
		if (!outcome.ok) return refused(outcome);
		redirect(303, `/${event.locals.lang}/proving/${run}`);
	}
};
