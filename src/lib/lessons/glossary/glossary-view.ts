import { otherLang, say, type Lang } from '$lib/i18n';
import { lessonAt } from '../catalogue';
import { GLOSSARY } from './glossary';
import type { Term } from './term';

/** A word of the trade as a reader finds it. */
export type TermView = {
	readonly id: string;
	readonly term: string;
	readonly other: { readonly term: string; readonly lang: Lang };
	readonly meaning: string;
	readonly lesson?: { readonly title: string; readonly href: string };
};

function termView({ id, term, meaning, lesson: slug }: Term, lang: Lang): TermView {
	const lesson = slug === undefined ? undefined : lessonAt(slug);
	const other = otherLang(lang);
	return {
		...{ id, term: say(term, lang), meaning: say(meaning, lang) },
		other: { term: say(term, other), lang: other },
		...(lesson ? { lesson: { title: lesson.head[lang].title, href: `/${lang}/lessons/${lesson.slug}` } } : {})
	};
}

const initial = (word: string) => word.normalize('NFKD').charAt(0).toUpperCase();

/** The glossary in the order of the reader's alphabet, by initial letter. */
export function glossaryView(lang: Lang) {
	const { compare } = new Intl.Collator(lang);
	const terms = GLOSSARY.map((term) => termView(term, lang)).toSorted((a, b) => compare(a.term, b.term));
	const letters = [...new Set(terms.map(({ term }) => initial(term)))];
	return letters.map((letter) => ({
		letter,
		terms: terms.filter(({ term }) => initial(term) === letter)
	}));
}
