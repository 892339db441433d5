import { DEMO_SHEETS, SHOP_VALUES } from '$lib/engine';
import type { FilledShop } from './filled-shop';
import { visit, type Visit } from './visit';

const sheet = DEMO_SHEETS[0]!.id;
const value = Object.keys(SHOP_VALUES)[0]!;

/** Where to go to see each page that is about people and their work, as somebody who sees most of it. */
export function shopVisits(shop: FilledShop): Readonly<Record<string, readonly Visit[]>> {
	const person = `/people/${shop.person}`;
	return {
		'/bench-card': [...visit('lead', '/bench-card'), ...visit('trainee', '/bench-card')],
		'/closed-book': visit('proving', '/closed-book'),
		'/crew': [...visit('lead', '/crew'), ...visit('auditor', '/crew')],
		'/crew/reports': [
			...visit('lead', '/crew/reports', '/crew/reports?person=demo-lead'),
			...visit('auditor', '/crew/reports')
		],
		'/incidents': visit('lead', '/incidents'),
		'/incidents/[id]': visit('lead', ...Object.values(shop.incidents)),
		'/incidents/new': visit('lead', '/incidents/new', '/incidents/new?defect=pinpoint-rust'),
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
