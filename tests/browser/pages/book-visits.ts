import { RULES, STATIONS } from '$lib/engine';
import { lessonSlugs } from './lesson-slugs';
import { visit, type Visit } from './visit';

/** One rule of each station and of safety: the others are the same page with other words. */
const rules = [...STATIONS, 'safety'].map(
	(station) => RULES.find(({ competency }) => competency === station)!.id
);

/** Where to go to see each page of the book, which holds the same for everybody. */
export const bookVisits: Readonly<Record<string, readonly Visit[]>> = {
	'/lessons': [...visit('trainee', '/lessons'), ...visit('nobody', '/lessons')],
	'/lessons/[slug]/wall': visit('trainee', `/lessons/${lessonSlugs[0]}/wall`),
	'/lessons/glossary': visit('nobody', '/lessons/glossary'),
	'/lessons/search': visit('nobody', ...['', '?q=film', '?q=qqq'].map((query) => `/lessons/search${query}`)),
	'/lessons/[slug]': [
		...visit('trainee', ...lessonSlugs.map((slug) => `/lessons/${slug}`)),
		...visit('nobody', `/lessons/${lessonSlugs[0]}`)
	],
	'/rules': visit('nobody', '/rules'),
	'/rules/[id]': visit('nobody', ...rules.map((rule) => `/rules/${rule}`)),
	'/rules/checks': visit('nobody', '/rules/checks'),
	'/rules/numbers': visit('nobody', '/rules/numbers')
};
