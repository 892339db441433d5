import { METRIC, US } from '$lib/engine';
import type { Reader } from '$lib/paper';
import type { Cookies, RequestEvent } from '@sveltejs/kit';

const UNITS_COOKIE = 'units';
const YEAR = 365 * 24 * 60 * 60;

/** Units as chosen on this PC; until then those usual where the language is read. */
const unitsOf = (cookies: Cookies, lang: 'en' | 'es') => {
	const chosen = cookies.get(UNITS_COOKIE);
	return chosen === 'us' || (chosen !== 'metric' && lang === 'en') ? US : METRIC;
};

/** Who a page is written for. */
export const readerOf = ({ locals, cookies }: Pick<RequestEvent, 'locals' | 'cookies'>): Reader => ({
	lang: locals.lang,
	units: unitsOf(cookies, locals.lang)
});

/** Keeps which units are shown on this PC; false for a word that names none. */
export function chooseUnits(
	{ cookies, url }: Pick<RequestEvent, 'cookies' | 'url'>,
	system: string
): boolean {
	if (system !== 'us' && system !== 'metric') return false;
	cookies.set(UNITS_COOKIE, system, { path: '/', maxAge: YEAR, secure: url.protocol === 'https:' });
	return true;
}
