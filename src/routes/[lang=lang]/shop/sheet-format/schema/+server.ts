import { enterShop, formatSchema } from '$lib/server';
import type { RequestHandler } from './$types';

export const GET: RequestHandler = (event) => {
	enterShop(event);
	return new Response(formatSchema(), {
		headers: {
			'content-type': 'application/schema+json; charset=utf-8',
			'content-disposition': 'attachment; filename="data-sheet.schema.json"'
		}
	});
};
