import { requirePerson, todayView } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	const { id } = requirePerson(event);
	return todayView(event.locals.app, id, event.locals.lang);
};
