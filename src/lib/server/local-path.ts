import { isLang } from '$lib/i18n';

/**
 * A path of this site to go on to after signing in, taken from a query that anybody may have written.
 * @returns path and query, or the fallback when it leads anywhere else
 */
export const localPath = (wish: string | null, url: URL, fallback: string): string => {
	if (!wish || !URL.canParse(wish, url)) return fallback;
	const target = new URL(wish, url);
	const isOurs = target.origin === url.origin && isLang(target.pathname.split('/')[1] ?? '');
	return isOurs ? target.pathname + target.search : fallback;
};
