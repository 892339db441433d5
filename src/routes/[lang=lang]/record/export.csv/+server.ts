import { recordCsv, requireRole } from '$lib/server';
import type { RequestHandler } from './$types';

export const GET: RequestHandler = (event) => {
	requireRole(event, 'lead', 'auditor');
	const { name, content } = recordCsv(event.locals.app, event.locals.lang);
	return new Response(content, {
		headers: {
			'content-type': 'text/csv; charset=utf-8',
			'content-disposition': `attachment; filename="${name}"`
		}
	});
};
