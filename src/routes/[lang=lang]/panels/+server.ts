import { error } from '@sveltejs/kit';
import { pictureFile } from '$lib/server';
import type { RequestHandler } from './$types';

/** A drawn panel, for lessons and practice alike: whoever may read a lesson may see it. */
export const GET: RequestHandler = ({ url }) => {
	const file = pictureFile(url.searchParams);
	if (!file) error(400);
	// the same address is the same picture for as long as the program draws alike
	return new Response(file.content, {
		headers: { 'content-type': file.type, 'cache-control': 'private, max-age=604800' }
	});
};
