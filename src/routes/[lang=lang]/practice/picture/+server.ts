import { error } from '@sveltejs/kit';
import { pictureFile, requirePerson } from '$lib/server';
import type { RequestHandler } from './$types';

export const GET: RequestHandler = (event) => {
	requirePerson(event);
	const file = pictureFile(event.url.searchParams);
	if (!file) error(400);
	// the same address is the same picture for as long as the program draws alike
	return new Response(file.content, {
		headers: { 'content-type': file.type, 'cache-control': 'private, max-age=604800' }
	});
};
