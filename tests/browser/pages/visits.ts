import { DEMO_SHEETS, RULES, SHOP_VALUES, STATIONS } from '$lib/engine';
import type { FilledShop, Viewer } from './filled-shop';
import { lessonSlugs } from './lesson-slugs';

/** A page to look at and who looks. `path` is what follows the language. */
export interface Visit {
	readonly as: Viewer;
	readonly path: string;
}

const visit = (as: Viewer, ...paths: readonly string[]): Visit[] => paths.map((path) => ({ as, path }));
const sheet = DEMO_SHEETS[0]!.id;
const value = Object.keys(SHOP_VALUES)[0]!;
/** One rule of each station and of safety: the others are the same page with other words. */
const rules = [...STATIONS, 'safety'].map(
	(station) => RULES.find(({ competency }) => competency === station)!.id
);

/**
 * Where to go to see each page of the route tree, with ids of what is there, as somebody who sees most of it.
 * A route of the disk that is missing here fails the test.
 */
export function visits(shop: FilledShop): Readonly<Record<string, readonly Visit[]>> {
	const person = `/people/${shop.person}`;
	return {
		'/closed-book': visit('proving', '/closed-book'),
		'/crew': [...visit('lead', '/crew'), ...visit('auditor', '/crew')],
		'/incidents': visit('lead', '/incidents'),
		'/incidents/[id]': visit('lead', ...Object.values(shop.incidents)),
		'/incidents/new': visit('lead', '/incidents/new', '/incidents/new?defect=pinpoint-rust'),
		'/lessons': [...visit('trainee', '/lessons'), ...visit('nobody', '/lessons')],
		'/lessons/[slug]': [
			...visit('trainee', ...lessonSlugs.map((slug) => `/lessons/${slug}`)),
			...visit('nobody', `/lessons/${lessonSlugs[0]}`)
		],
		'/people/[person]': visit('lead', person),
		'/people/[person]/continuity/[competency]': visit('lead', `${person}/continuity/curing`),
		'/people/[person]/practical/[competency]': visit(
			'lead',
			`${person}/practical/curing`,
			`${person}/practical/mixing?coating=${sheet}`
		),
		'/people/[person]/sheet': visit('lead', `${person}/sheet`),
		'/people/[person]/sign-off/[competency]': visit('lead', `${person}/sign-off/curing`),
		'/practice': visit('supervisor', '/practice'),
		'/practice/[attempt]': [...visit('supervisor', shop.inHand), ...visit('lead', shop.handedIn)],
		'/proving': visit('proving', '/proving'),
		'/proving/[run]': visit('proving', shop.drill.replace(/\/[^/]+$/, '')),
		'/proving/[run]/[drill]': visit('proving', shop.drill, `${shop.drill}?review=`),
		'/record': [...visit('lead', '/record'), ...visit('auditor', '/record')],
		'/record/verify': visit('auditor', '/record/verify'),
		'/rules': visit('nobody', '/rules'),
		'/rules/[id]': visit('nobody', ...rules.map((rule) => `/rules/${rule}`)),
		'/rules/numbers': visit('nobody', '/rules/numbers'),
		'/shop': [...visit('lead', '/shop'), ...visit('auditor', '/shop')],
		'/shop/import-sheet': visit('lead', '/shop/import-sheet', `/shop/import-sheet?sheet=${sheet}`),
		'/shop/new-sheet': visit('lead', '/shop/new-sheet'),
		'/shop/people': visit('lead', '/shop/people'),
		'/shop/people/[person]': visit('lead', `/shop${person}`, '/shop/people/demo-auditor'),
		'/shop/people/[person]/erase': visit('lead', `/shop${person}/erase`),
		'/shop/people/new': visit('lead', '/shop/people/new'),
		'/shop/scheme': visit('lead', '/shop/scheme'),
		'/shop/sheet-format': visit('lead', '/shop/sheet-format'),
		'/shop/sheets': visit('lead', '/shop/sheets'),
		'/shop/sheets/[sheet]': visit('lead', `/shop/sheets/${sheet}`),
		'/shop/sheets/[sheet]/edit': visit('lead', `/shop/sheets/${sheet}/edit`),
		'/shop/values': visit('lead', '/shop/values'),
		'/shop/values/[value]': visit('lead', `/shop/values/${value}`),
		'/shop/values/gear': visit('lead', '/shop/values/gear'),
		'/sign-in': visit('nobody', '/sign-in', '/sign-in?who=demo-trainee'),
		'/today': [...visit('trainee', '/today'), ...visit('lead', '/today'), ...visit('proving', '/today')]
	};
}
