import { describe, expect, test } from 'vitest';
import { LANGS } from '$lib/i18n';
import { GLOSSARY, glossaryView, LESSONS } from '$lib/lessons';

const words = (text: string) => text.split(/\s+/).length;
const repeated = (values: readonly string[]) => values.filter((value, at) => values.indexOf(value) !== at);

test('there are at least a hundred and ten terms, each with an anchor of its own', () => {
	expect(GLOSSARY.length).toBeGreaterThanOrEqual(110);
	expect(repeated(GLOSSARY.map(({ id }) => id))).toEqual([]);
});

describe.each(LANGS)('in %s', (lang) => {
	test('no term stands twice, and each is said in at most thirty words, as sentences', () => {
		expect(repeated(GLOSSARY.map(({ term }) => term[lang].toLowerCase()))).toEqual([]);
		const meanings = GLOSSARY.map(({ meaning }) => meaning[lang]);
		expect(meanings.filter((text) => words(text) > 30)).toEqual([]);
		expect(meanings.filter((text) => !/^\p{Lu}.*\.$/u.test(text))).toEqual([]);
	});

	test('is read in its own alphabet, every term once under its letter, the other language beside it', () => {
		const letters = glossaryView(lang);
		const shown = letters.flatMap(({ terms }) => terms);
		expect(shown.map(({ id }) => id).toSorted()).toEqual(GLOSSARY.map(({ id }) => id).toSorted());
		expect(repeated(letters.map(({ letter }) => letter))).toEqual([]);
		expect(shown.map(({ term }) => term)).toEqual(
			shown.map(({ term }) => term).toSorted(new Intl.Collator(lang).compare)
		);
		for (const { letter, terms } of letters) {
			expect(letter).toMatch(/^[A-Z]$/);
			for (const { id, other } of terms)
				expect(other.term).toBe(GLOSSARY.find((term) => term.id === id)!.term[other.lang]);
		}
	});
});

test('no number stands in it: those come from the shop', () => {
	expect(GLOSSARY.filter(({ meaning }) => /\d/.test(meaning.en + meaning.es))).toEqual([]);
});

test('Spanish is not left in English', () => {
	expect(GLOSSARY.filter(({ meaning }) => meaning.en === meaning.es)).toEqual([]);
});

test('a term leads to the lesson that teaches it, where one does', () => {
	const slugs = new Set(LESSONS.map(({ slug }) => slug));
	const lost = GLOSSARY.filter(({ lesson }) => lesson !== undefined && !slugs.has(lesson));
	expect(lost.map(({ id, lesson }) => `${id}: ${lesson}`)).toEqual([]);
});
