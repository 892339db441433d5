import * as messages from '$lib/i18n';
import { isLang, LANGS, requests, shell, type Lang } from '$lib/i18n';
import type { Answer } from './send';

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
	...Object.values(shell[lang].problem).map(({ title }) => title),
	...Object.values(requests[lang].status).map(({ title }) => title)
];

/** What a page says about what went wrong: every alert and every marked field's page, or the page of an error. */
function said(html: string, lang: Lang): string {
	const alerts = html.split(/role="alert"[^>]*>/).slice(1);
	// an alert is not told apart from what follows it; a little of that does no harm to finding words in it
	if (alerts.length) return alerts.map((rest) => plain(rest.slice(0, 600))).join(' ');
	const heading = plain(/<h1[^>]*>([\s\S]*?)<\/h1>/.exec(html)?.[1] ?? '');
	return titles(lang).some((title) => heading.includes(title)) ? heading : '';
}

/** The language an answer is due in: the address's, else the one the sender asked for. */
export const dueIn = (path: string, wished: Lang): Lang => {
	const first = path.split(/[/?]/)[1] ?? '';
	return isLang(first) ? first : wished;
};

/** What is wrong with the page of a refusal; null when it says clearly, in the right language, what happened. */
export function unclear({ headers, text }: Answer, lang: Lang): string | null {
	if (!headers['content-type']?.startsWith('text/html')) return `is ${headers['content-type']}, no page`;
	const declared = /<html[^>]* lang="(\w*)"/.exec(text)?.[1];
	if (declared !== lang) return `is a page in "${declared}", not in "${lang}"`;
	const words = said(text, lang);
	if (!words) return 'does not say what is wrong';
	const foreign = SENTENCES[lang === 'en' ? 'es' : 'en'].find((sentence) => words.includes(sentence));
	return foreign ? `says in the wrong language: ${foreign}` : null;
}

/** What must be in no answer at all; null when it is not. */
export function dangerous({ status, headers, text }: Answer): string | null {
	if (status >= 500) return `failed: ${status}`;
	if (text.includes('<script>alert(')) return 'carries what was typed as script';
	if (JSON.stringify(headers).includes('hostile=1')) return 'carries what was typed as a header';
	return null;
}

/** What is wrong with the answer to something that must not be done; null when nothing is. */
export function complaint(answer: Answer, lang: Lang): string | null {
	const danger = dangerous(answer);
	if (danger) return danger;
	if (answer.status < 400) return `was taken: ${answer.status} ${answer.headers.location ?? ''}`;
	return unclear(answer, lang);
}
