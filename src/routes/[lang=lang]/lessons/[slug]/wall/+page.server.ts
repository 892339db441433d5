import { error } from '@sveltejs/kit';
import { requests } from '$lib/i18n';
import { lessonAt, wallView } from '$lib/lessons';
import { readerOf, shopInForce } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	const { app, lang } = event.locals;
	const lesson = lessonAt(event.params.slug) ?? error(404, requests[lang].status[404].title);
	return {
		...lesson.head[lang],
		slug: lesson.slug,
		printedAt: app.now().toISOString(),
		rules: wallView(lesson, shopInForce(app).shop, readerOf(event))
	};
};
