import { isAsked, wordsOf, type Word } from './words-of';

/** Something of the book that can be found. `kind` decides under which heading it is listed. */
export type Entry<Kind extends string = string> = {
	readonly kind: Kind;
	readonly title: string;
	readonly href: string;
	/** What is searched and quoted besides the title. */
	readonly text: string;
};

/** An entry with its words taken apart once. */
export type Indexed<Kind extends string = string> = Entry<Kind> & {
	readonly words: { readonly title: readonly Word[]; readonly text: readonly Word[] };
};

export type Found<Kind extends string = string> = Pick<Entry<Kind>, 'kind' | 'title' | 'href'> & {
	/** A few words around the first place, cut at words. */
	readonly excerpt: string;
};

/** A word in the title says more of what an entry is about than many in its text. */
const IN_TITLE = 10;
/** Letters quoted before and after the first place. */
const BEFORE = 50;
const AFTER = 110;

export const indexed = <Kind extends string>(entry: Entry<Kind>): Indexed<Kind> => ({
	...entry,
	words: { title: wordsOf(entry.title), text: wordsOf(entry.text) }
});

function excerpt(text: string, at: number): string {
	const from = at <= BEFORE ? 0 : text.indexOf(' ', at - BEFORE) + 1;
	const to = text.length <= at + AFTER ? text.length : text.lastIndexOf(' ', at + AFTER);
	return `${from > 0 ? '… ' : ''}${text.slice(from, to)}${to < text.length ? ' …' : ''}`;
}

/**
 * The entries in which every word of the query stands, or a longer word that begins with it; the ones that speak of
 * them most come first, then in the order given. An ending of the plural does not matter. Nothing for a query without
 * a word.
 */
export function search<Kind extends string>(
	entries: readonly Indexed<Kind>[],
	query: string
): readonly Found<Kind>[] {
	const asked = wordsOf(query).map(({ plain }) => plain);
	if (!asked.length) return [];
	return entries
		.map((entry) => {
			const hits = (words: readonly Word[], one: string) => words.filter(({ plain }) => isAsked(plain, one));
			const counts = asked.map(
				(one) => IN_TITLE * hits(entry.words.title, one).length + hits(entry.words.text, one).length
			);
			const places = asked.flatMap((one) => hits(entry.words.text, one)[0]?.at ?? []);
			return { entry, counts, first: Math.min(...places) };
		})
		.filter(({ counts }) => counts.every((count) => count > 0))
		.toSorted((one, other) => sum(other.counts) - sum(one.counts))
		.map(({ entry: { kind, title, href, text }, first }) => ({
			...{ kind, title, href },
			excerpt: excerpt(text, Number.isFinite(first) ? first : 0)
		}));
}

const sum = (numbers: readonly number[]) => numbers.reduce((one, other) => one + other, 0);
