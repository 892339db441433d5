import type { Actor } from './actors';
import type { Attempt } from './attempts';
import { addressOf, paramsOf, type Route } from './route-tree';
import { IDS, VALUES } from './values';
import type { Place } from './places';

/** Every name that stands in a query of ours. */
const QUERY = [
	...['kind', 'page', 'revision', 'done', 'next', 'why', 'who', 'review', 'incident', 'competency'],
	...['defect', 'sheet', 'coating']
];
/** An address may not be longer than node reads. */
const LONGEST = 1000;

const encoded = ({ text, encoded }: { text: string; encoded?: string }) =>
	encoded ?? encodeURIComponent(text.slice(0, LONGEST));

/** The route where nothing but the language can be wrong. */
const START = '/[lang=lang]';

/** Addresses of the route with one parameter that is hostile, the others as at a real place; the language once only. */
export const strayPaths = (route: Route, { params }: Place, lang: string): string[] =>
	paramsOf(route)
		.filter((name) => name !== 'lang' || route.id === START)
		.flatMap((name) => IDS.map((id) => addressOf(route, { lang, ...params, [name]: id })));

/** The page at a real place, asked for with queries it does not know what to do with. */
export const oddQueries = (path: string): string[] => {
	const [page = ''] = path.split('?');
	// one name has its value alone, since a page that stops at it never looks at the others
	return QUERY.map((name, index) => `${page}?${name}=${encoded(VALUES[(2 * index) % VALUES.length]!)}`);
};

const METHODS = ['PUT', 'PATCH', 'DELETE', 'PROPFIND'];

/** Methods the route does not answer to, each as if from a page of our own. */
export const oddMethods = (route: Route, path: string, origin: string, actor: Actor): Attempt[] =>
	(route.actions.length ? METHODS : ['POST', ...METHODS]).map((method) => ({
		what: `by ${method}`,
		asked: { method, path, headers: { ...headersOf(actor), origin } }
	}));

export const headersOf = ({ cookie, lang }: Actor): Record<string, string> => ({
	accept: 'text/html',
	'accept-language': lang,
	...(cookie ? { cookie } : {})
});

export const reading = (path: string, actor: Actor): Attempt => ({
	what: 'read',
	asked: { method: 'GET', path, headers: headersOf(actor) }
});
