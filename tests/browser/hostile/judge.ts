import * as messages from '$lib/i18n';
import { LANGS, isLang, noPage, requests, shell, type Lang } from '$lib/i18n';
import type { Answer } from './send';

/** Says what is wrong with an answer, given the language it is due in; null when nothing is. */
export type Judge = (answer: Answer, lang: Lang) => string | null;

const plain = (html: string) =>
	html
		.replace(/<[^>]*>/g, ' ')
		.replaceAll('&lt;', '<')
		.replaceAll('&quot;', '"')
		.replaceAll('&amp;', '&')
		.replace(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code)))
		.replace(/\s+/g, ' ')
		.trim();

const textsIn = (table: unknown): string[] => {
	if (typeof table === 'string') return [table];
	return table && typeof table === 'object' ? Object.values(table).flatMap(textsIn) : [];
};

/** Sentences long enough not to turn up by chance. */
const SENTENCE = 18;

/** The sentences of one language that the other does not have too. */
const sentences = (lang: Lang): string[] => {
	const tables = Object.values(messages).filter(
		(table): table is typeof shell => typeof table === 'object' && LANGS.every((one) => one in table)
	);
	const [own, other] = [lang, lang === 'en' ? 'es' : 'en'].map(
		(one) => new Set(tables.flatMap((table) => textsIn(table[one as Lang])))
	);
	return [...own!].filter((text) => text.length >= SENTENCE && !other!.has(text));
};
const SENTENCES = { en: sentences('en'), es: sentences('es') };

const titles = (lang: Lang) => [
	...Object.values(noPage[lang].problem).map(({ title }) => title),
	...Object.values(requests[lang].status).map(({ title }) => title)
];

/** What a page says about what went wrong: every alert and every marked field's page, or the page of an error. */
function said(html: string, lang: Lang): string {
	const alerts = html.split(/role="alert"[^>]*>/).slice(1);
	// an alert is not told apart from what follows it; a little of that does no harm to finding words in it
	if (alerts.length) return alerts.map((rest) => plain(rest.slice(0, 600))).join(' ');
	// outside the languages of the address an error speaks both, one heading each
	const headings = [...html.matchAll(/<h[12][^>]*>([\s\S]*?)<\/h[12]>/g)].map(([, heading]) =>
		plain(heading!)
	);
	return headings.find((heading) => titles(lang).some((title) => heading.includes(title))) ?? '';
}

/** The language an answer is due in: the address's, else the one the sender asked for. */
export const dueIn = (path: string, wished: Lang): Lang => {
	const first = path.split(/[/?]/)[1] ?? '';
	return isLang(first) ? first : wished;
};

/** What is wrong with the page of a refusal; null when it says clearly, in the right language, what happened. */
function unclear({ headers, text }: Answer, lang: Lang): string | null {
	if (!headers['content-type']?.startsWith('text/html')) return `is ${headers['content-type']}, no page`;
	const declared = /<html[^>]* lang="(\w*)"/.exec(text)?.[1];
	if (declared !== lang) return `is a page in "${declared}", not in "${lang}"`;
	const words = said(text, lang);
	if (!words) return 'does not say what is wrong';
	const foreign = SENTENCES[lang === 'en' ? 'es' : 'en'].find((sentence) => words.includes(sentence));
	return foreign ? `says in the wrong language: ${foreign}` : null;
}

/** What must be in no answer at all; null when it is not. */
function dangerous({ status, headers, text }: Answer): string | null {
	if (status >= 500) return `failed: ${status}`;
	if (text.includes('<script>alert(')) return 'carries what was typed as script';
	if (JSON.stringify(headers).includes('hostile=1')) return 'carries what was typed as a header';
	return null;
}

const leadsTo = ({ status, headers }: Answer, path: string): boolean =>
	status === 303 && (headers.location ?? '').split('?')[0] === path;

/**
 * What is wrong with the answer to something that must not be done; null when nothing is. Whoever has a proving drill
 * open is led to the page that says so, whatever they send to a part of the book.
 */
export function taken(answer: Answer, lang: Lang): string | null {
	const danger = dangerous(answer);
	if (danger || leadsTo(answer, `/${lang}/closed-book`)) return danger;
	if (answer.status < 400) return `was taken: ${answer.status} ${answer.headers.location ?? ''}`;
	return unclear(answer, lang);
}

/** What is wrong with the answer to reading at an address that is none; nobody is led to signing in first. */
export const found = (answer: Answer, lang: Lang): string | null =>
	leadsTo(answer, `/${lang}/sign-in`) ? dangerous(answer) : taken(answer, lang);

/** What is wrong with a page asked for with an odd query: it may well be shown, or else says why not. */
export const broken = (answer: Answer, lang: Lang): string | null =>
	dangerous(answer) ?? (answer.status >= 400 ? unclear(answer, lang) : null);

/** What is wrong with the answer to a method there is none for. No page sends one, so none has to explain itself. */
export const answered = (answer: Answer, lang: Lang): string | null =>
	dangerous(answer) ??
	(answer.status >= 400 || leadsTo(answer, `/${lang}/closed-book`) ? null : `was taken: ${answer.status}`);
