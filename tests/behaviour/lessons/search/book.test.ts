import { describe, expect, test } from 'vitest';
import { DEFECTS, RULES } from '$lib/engine';
import { LANGS } from '$lib/i18n';
import { GLOSSARY, LESSONS, searchBook } from '$lib/lessons';

const titles = (query: string, lang: 'en' | 'es') =>
	searchBook(query, lang).flatMap(({ kind, found }) => found.map(({ title }) => [kind, title] as const));

describe.each(LANGS)('in %s', (lang) => {
	test('every lesson, rule, defect and term is found by its whole title', () => {
		const wanted = [
			...LESSONS.map(({ head }) => ['lesson', head[lang].title] as const),
			...RULES.map(({ title }) => ['rule', title[lang]] as const),
			...Object.values(DEFECTS).map((name) => ['defect', name[lang]] as const),
			...GLOSSARY.map(({ term }) => ['term', term[lang]] as const)
		];
		const missed = wanted.filter(
			([kind, title]) => !titles(title, lang).some((one) => one[0] === kind && one[1] === title)
		);
		expect(missed).toEqual([]);
	});

	test('every link goes to a page of this language', () => {
		const links = searchBook(lang === 'en' ? 'film' : 'película', lang).flatMap(({ found }) => found);
		expect(links.length).toBeGreaterThan(10);
		for (const { href } of links) expect(href).toMatch(new RegExp(`^/${lang}/(lessons|rules)/[a-z0-9#-]+`));
	});
});

test('a rule is found in the lesson that teaches it, at its section', () => {
	const { title, lesson, id } = RULES[0]!;
	const [first] = searchBook(title.en, 'en').find(({ kind }) => kind === 'lesson')!.found;
	expect(first!.href).toBe(`/en/lessons/${lesson}`);
	expect(lesson.endsWith(`#${id}`)).toBe(true);
});

test('a term is found by its word in the other language', () => {
	expect(titles('pot life', 'es')).toContainEqual(['term', 'vida de la mezcla']);
	expect(titles('termopar', 'en')).toContainEqual(['term', 'thermocouple']);
});

test('of many only the first are shown, and the rest counted', () => {
	const lessons = searchBook('the', 'en').find(({ kind }) => kind === 'lesson')!;
	expect(lessons.found).toHaveLength(8);
	expect(lessons.more).toBeGreaterThan(0);
	expect(searchBook('thermocouple', 'en').find(({ kind }) => kind === 'term')!.more).toBe(0);
});

test('nothing is found for words that stand nowhere together', () => {
	expect(searchBook('qqq', 'en')).toEqual([]);
	expect(searchBook('', 'en')).toEqual([]);
});

test('no lesson takes the address of the search or the glossary', () => {
	expect(LESSONS.map(({ slug }) => slug).filter((slug) => slug === 'search' || slug === 'glossary')).toEqual(
		[]
	);
});
