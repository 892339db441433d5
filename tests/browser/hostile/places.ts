import { addressOf, paramsOf, type Route } from './route-tree';
import type { Stock } from './stock';

/** Parameters of an address and, where the page needs one to show its form, a query. */
export type Place = { readonly params: Readonly<Record<string, string>>; readonly query?: string };

const COMPETENCY = 'curing';
const people = (...ids: string[]) => ids.map((person) => ({ params: { person } }));
const areas = (query?: string) =>
	['demo-aprendiz', 'demo-lead'].map((person) => ({
		params: { person, competency: COMPETENCY },
		...(query ? { query } : {})
	}));

/** Real places under each route that has parameters or a query: one's own, another person's, and mixed-up ones. */
const places = (stock: Stock): Readonly<Record<string, readonly Place[]>> => ({
	'lessons/[slug]': [{ params: { slug: stock.lesson } }],
	'lessons/[slug]/wall': [{ params: { slug: stock.lesson } }],
	'rules/[id]': [{ params: { id: stock.rule } }],
	'practice/[attempt]': [
		{ params: { attempt: stock.practice.trainee } },
		{ params: { attempt: stock.practice.other } },
		{ params: { attempt: stock.practice.handedIn } }
	],
	'practice/[attempt]/film-map': [{ params: { attempt: stock.practice.other } }],
	'practice/[attempt]/panel': [{ params: { attempt: stock.practice.trainee }, query: '?view=plain' }],
	'proving/[run]': [{ params: { run: stock.runs.trainee } }, { params: { run: stock.runs.other } }],
	'proving/[run]/[drill]': [
		{ params: { run: stock.runs.other, drill: stock.drills.open } },
		{ params: { run: stock.runs.other, drill: stock.drills.settled } },
		{ params: { run: stock.runs.trainee, drill: stock.drills.open } }
	],
	'incidents/new': [{ params: {}, query: `?defect=${stock.defect}` }],
	'incidents/[id]': [
		{ params: { id: stock.incidents.undecided } },
		{ params: { id: stock.incidents.decided } },
		{ params: { id: stock.incidents.alsoUndecided } }
	],
	'people/[person]': people('demo-aprendiz', 'demo-lead'),
	'people/[person]/sheet': people('demo-aprendiz', 'demo-lead'),
	'people/[person]/practical/[competency]': areas(`?coating=${stock.sheet}`),
	'people/[person]/continuity/[competency]': areas(),
	'people/[person]/sign-off/[competency]': areas(),
	'shop/people/[person]': people('demo-trainee', 'demo-auditor', 'demo-lead'),
	'shop/people/[person]/erase': people('demo-trainee', 'demo-lead'),
	'shop/values/[value]': stock.values.map((value) => ({ params: { value } })),
	'shop/sheets/[sheet]': [{ params: { sheet: stock.sheet } }],
	'shop/sheets/[sheet]/edit': [{ params: { sheet: stock.sheet } }],
	'shop/sheets/[sheet]/file': [{ params: { sheet: stock.sheet } }],
	'shop/import-sheet': [{ params: {} }, { params: {}, query: `?sheet=${stock.sheet}` }],
	'sign-in': [{ params: {}, query: '?who=demo-trainee' }]
});

const LANG = '/[lang=lang]/';

/** The real places under a route. A route whose parameters nobody has filled in here is an error, not left out. */
export function placesOf(route: Route, stock: Stock): readonly Place[] {
	const known = places(stock)[route.id.startsWith(LANG) ? route.id.slice(LANG.length) : route.id];
	if (known) return known;
	const asks = paramsOf(route).filter((name) => name !== 'lang');
	if (asks.length) throw new Error(`places.ts has no real address for ${route.id}`);
	return [{ params: {} }];
}

export const pathOf = (route: Route, { params, query = '' }: Place, lang: string): string =>
	addressOf(route, { ...params, lang }) + query;
