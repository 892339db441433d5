import { askable, LESSONS } from '$lib/lessons';
import { learner, lessonDone, lessonTries, shopInForce } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	const { app, lang } = event.locals;
	const person = learner(event);
	const { shop } = shopInForce(app);
	return {
		learns: person !== null,
		lessons: LESSONS.map((lesson) => {
			const { slug, station, version, checks } = lesson;
			const done = person === null ? undefined : lessonDone(app, person, slug);
			const tries = person === null ? {} : lessonTries(app, person, lesson).checks;
			return {
				...{ slug, station, ...lesson.head[lang] },
				done: done ? { at: done.at, changed: done.version !== String(version) } : null,
				begun: {
					right: Object.values(tries).filter(({ right }) => right).length,
					of: askable(checks, shop).length
				}
			};
		})
	};
};
