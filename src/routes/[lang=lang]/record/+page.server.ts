import { recordView, requireRole } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	requireRole(event, 'lead', 'auditor');
	const { app, lang } = event.locals;
	const wished = (name: string) => event.url.searchParams.get(name) ?? '';
	return {
		...recordView(app, { kind: wished('kind'), page: wished('page') }, lang),
		printedAt: app.now().toISOString()
	};
};
