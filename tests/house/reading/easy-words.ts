import { GLOSSARY } from '$lib/lessons';
import type { Lang } from '$lib/i18n';

/** An everyday word of each language, as long as such words are there. */
const EASY: Readonly<Record<Lang, string>> = { en: 'thing', es: 'cosa' };

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** A term with an ending of the plural on any of its words; what stands in brackets is another way to say it. */
const spellings = (term: string) => term.split(/[()]/).map((one) => one.trim());
const pattern = (lang: Lang) =>
	GLOSSARY.flatMap(({ term }) => spellings(term[lang]))
		.filter((spelling) => spelling.length > 1)
		.toSorted((one, other) => other.length - one.length)
		.map((spelling) =>
			spelling
				.split(/\s+/)
				.map((word) => `${escaped(word)}(?:s|es)?`)
				.join('\\s+')
		)
		.join('|');

const TERMS = {
	en: new RegExp(`(?<![\\p{L}-])(?:${pattern('en')})(?![\\p{L}-])`, 'giu'),
	es: new RegExp(`(?<![\\p{L}-])(?:${pattern('es')})(?![\\p{L}-])`, 'giu')
};

/** The text with one easy word in place of each term of the glossary: a reader looks those up and then knows them. */
export const withEasyWords = (text: string, lang: Lang) => text.replace(TERMS[lang], EASY[lang]);
