import { DEFECT_SHEETS, DEFECTS, ruleById, RULES, type DefectId, type Text } from '$lib/engine';
import { otherLang, say, type Lang } from '$lib/i18n';
import { LESSONS } from '../catalogue';
import { GLOSSARY } from '../glossary/glossary';
import { indexed, search, type Entry, type Found, type Indexed } from './search';
import { spoken } from './spoken';
import { textOf } from './texts';

/** What the book holds, in the order its kinds are listed. */
export const BOOK_KINDS = ['lesson', 'rule', 'defect', 'term'] as const;
export type BookKind = (typeof BOOK_KINDS)[number];

const lessons = (lang: Lang): Entry<BookKind>[] =>
	LESSONS.flatMap(({ slug, folder, head }) => {
		const { title, aim } = head[lang];
		const { sections, rest } = textOf(folder, lang);
		const href = `/${lang}/lessons/${slug}`;
		return [
			{ kind: 'lesson' as const, title, href, text: inLine(aim, spoken(rest)) },
			...sections.map(({ rule, prose }) => ({
				kind: 'lesson' as const,
				title: `${title}: ${say(ruleById(rule).title, lang)}`,
				href: `${href}#${rule}`,
				text: inLine(spoken(prose))
			}))
		];
	});

function entries(lang: Lang): Entry<BookKind>[] {
	const words = (...texts: readonly Text[]) => inLine(...texts.map((text) => say(text, lang)));
	return [
		...lessons(lang),
		...RULES.map(({ id, title, why, outcome, evidence }) => ({
			...{ kind: 'rule' as const, title: say(title, lang), href: `/${lang}/rules/${id}` },
			text: words(why, outcome, evidence)
		})),
		...(Object.keys(DEFECTS) as DefectId[]).map((id) => ({
			...{ kind: 'defect' as const, title: say(DEFECTS[id], lang) },
			href: `/${lang}/lessons/defects#defect-${id}`,
			text: words(DEFECT_SHEETS[id].look, DEFECT_SHEETS[id].lookAlike, DEFECT_SHEETS[id].now)
		})),
		...GLOSSARY.map(({ id, term, meaning }) => ({
			...{ kind: 'term' as const, title: say(term, lang), href: `/${lang}/lessons/glossary#${id}` },
			text: `${say(meaning, lang)} (${say(term, otherLang(lang))})`
		}))
	];
}

const inLine = (...texts: readonly string[]) => texts.join(' ').replaceAll('\n', ' ');

const books = new Map<Lang, readonly Indexed<BookKind>[]>();

/** Lessons, rules, defects and glossary as they are searched; taken apart once, for they only change with the program. */
function book(lang: Lang) {
	const known = books.get(lang) ?? entries(lang).map(indexed);
	books.set(lang, known);
	return known;
}

/** Letters of a query that are read; the form takes no more. */
const LONGEST = 100;
/** As many of one kind as somebody reads through. */
const SHOWN = 8;

/** One heading of what was found. */
export type FoundGroup = {
	readonly kind: BookKind;
	readonly found: readonly Found<BookKind>[];
	/** How many more there are. */
	readonly more: number;
};

/** What the book says of a query, by kind; kinds without any are left out. */
export function searchBook(query: string, lang: Lang): readonly FoundGroup[] {
	const all = search(book(lang), query.slice(0, LONGEST));
	return BOOK_KINDS.map((kind) => ({ kind, all: all.filter((one) => one.kind === kind) }))
		.filter(({ all }) => all.length > 0)
		.map(({ kind, all }) => ({ kind, found: all.slice(0, SHOWN), more: Math.max(0, all.length - SHOWN) }));
}
