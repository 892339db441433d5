import { error } from '@sveltejs/kit';
import { noPage } from '$lib/i18n';
import { reportsView, requireRole } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	requireRole(event, 'supervisor', 'auditor');
	const { app, lang } = event.locals;
	const person = event.url.searchParams.get('person') ?? '';
	return reportsView(app, person, lang) ?? error(404, noPage[lang].problem[404].title);
};
