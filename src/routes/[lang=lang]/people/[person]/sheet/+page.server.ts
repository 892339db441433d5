import { readerOf, requireReaderOf, signOffSheet } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	const { person } = event.params;
	requireReaderOf(event, person);
	return signOffSheet(event.locals.app, person, event.url.searchParams.get('competency'), readerOf(event));
};
