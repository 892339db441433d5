import { error, fail } from '@sveltejs/kit';
import { drillKind, partsFor } from '$lib/drills';
import { requests, say, terms } from '$lib/i18n';
import {
	answerCheck,
	answeredView,
	askable,
	exampleOf,
	lessonAt,
	lessonView,
	neighbours
} from '$lib/lessons';
import { learner, lessonDone, lessonTries, noteTry, readerOf, shopInForce, typed } from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

const found = (slug: string, lang: 'en' | 'es') =>
	lessonAt(slug) ?? error(404, requests[lang].status[404].title);

/** Drills on what a lesson teaches. */
const drillsOn = ({ names }: NonNullable<ReturnType<typeof lessonAt>>, lang: 'en' | 'es') =>
	partsFor(names.rules).map((part) => {
		const kind = drillKind(part);
		const station = (terms[lang].station as Record<string, string>)[part];
		return { part, title: kind ? say(kind.title, lang) : (station ?? part) };
	});

export const load: PageServerLoad = (event) => {
	const { app, lang } = event.locals;
	const lesson = found(event.params.slug, lang);
	const { shop } = shopInForce(app);
	const person = learner(event);
	const tries = person === null ? {} : lessonTries(app, person, lesson).checks;
	const settled = Object.keys(tries).filter((id) => tries[id]?.right);
	const done = person === null ? undefined : lessonDone(app, person, lesson.slug);
	const { before, after } = neighbours(lesson.slug);
	const link = (to: typeof before) => (to ? { slug: to.slug, title: to.head[lang].title } : null);
	return {
		...lesson.head[lang],
		...{ folder: lesson.folder, station: lesson.station, learns: person !== null },
		done: done ? { at: done.at, changed: done.version !== String(lesson.version) } : null,
		begun: settled.length > 0,
		left: askable(lesson.checks, shop).filter(({ id }) => !settled.includes(id)).length,
		...{ before: link(before), after: link(after) },
		drills: drillsOn(lesson, lang),
		slug: lesson.slug,
		view: lessonView(lesson, shop, readerOf(event), settled)
	};
};

export const actions: Actions = {
	check: async (event) => {
		const { app, lang } = event.locals;
		const lesson = found(event.params.slug, lang);
		const form = await event.request.formData();
		const { shop } = shopInForce(app);
		const reader = readerOf(event);
		const check = lesson.checks.find(({ id }) => id === typed(form, 'check'));
		const result = check && answerCheck(check, exampleOf(check, shop), form, reader);
		if (!check || !result) return error(400, requests[lang].status[400].title);

		const view = answeredView(check, result, shop, reader);
		if (result.outcome === 'unread' || result.outcome === 'empty') return fail(400, { check: view });
		if (result.outcome === 'open' || learner(event) === null) return { check: view };
		const asked = askable(lesson.checks, shop).map(({ id }) => id);
		const noted = await noteTry(event, lesson, asked, check.id, result.outcome === 'right');
		return { check: noted === 'open' ? view : { ...view, lesson: noted } };
	}
};
