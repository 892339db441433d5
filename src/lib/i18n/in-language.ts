import type { Lang } from './lang';

/**
 * Path and query of the same page in another language. A form action in the query (`?/hand-in`) is dropped:
 * following it by a link would ask for a page that only answers to a form.
 */
export function inLanguage(url: URL, lang: Lang): string {
	const path = url.pathname.replace(/^\/[^/]*/, `/${lang}`);
	const kept = [...url.searchParams].filter(([name]) => !name.startsWith('/'));
	const query = new URLSearchParams(kept).toString();
	return query ? `${path}?${query}` : path;
}
