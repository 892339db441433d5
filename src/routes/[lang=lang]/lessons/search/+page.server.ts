import { searchBook } from '$lib/lessons';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = ({ url, locals }) => {
	const query = (url.searchParams.get('q') ?? '').trim();
	return { query, groups: searchBook(query, locals.lang) };
};
