import { cardAccess, requirePerson, todayView } from '$lib/server';
import { lessonTitles } from '../people/lesson-titles';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	const { id } = requirePerson(event);
	const { app, lang } = event.locals;
	return {
		...todayView(app, id, lang),
		benchCard: cardAccess(app, id, lang).may,
		titles: lessonTitles(lang)
	};
};
