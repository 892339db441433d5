import { METRIC, US } from '$lib/engine';
import type { Reader } from '$lib/paper';
import type { Cookies, RequestEvent } from '@sveltejs/kit';

export const UNITS_COOKIE = 'units';

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
