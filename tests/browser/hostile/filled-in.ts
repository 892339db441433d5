import type { Stock } from './stock';

/** What a person would type into a form so that it is taken, beyond what the page has put there already. */
export type FilledIn = Readonly<Record<string, string>>;

const day = (ahead: number) => new Date(Date.now() + ahead * 86_400_000).toISOString().slice(0, 10);

/**
 * Per form action, entries that make the form right. Hostile entries are put into these one at a time, so that what is
 * refused is refused for that one entry; at the end the forms are sent as they are, and every one has to be taken.
 */
export const filledIn = (stock: Stock): Readonly<Record<string, FilledIn>> => ({
	'practice ?/default': {},
	'proving ?/default': { competency: 'intake' },
	'incidents/new ?/default': { job: 'J-2001', person: 'demo-aprendiz', coating: stock.sheet, air: '21 °C' },
	'incidents/[id] ?/cause': { shown: 'kept' },
	'incidents/[id] ?/gap': { evidence: 'Gun held at half the distance.' },
	'incidents/[id] ?/close': { jobsChecked: '5', repeats: '0' },
	'shop/people/new ?/default': { name: 'Rosa Iglesias', roles: 'trainee', secret: '7302', again: '7302' },
	'shop/people/[person] ?/secret': { secret: '7302', again: '7302' },
	'shop/people/[person] ?/access': { until: day(10) },
	'shop/values/[value] ?/default': { reason: 'Tried on twenty parts.' },
	'shop/values/gear ?/default': { oven: 'heat-gloves', reason: 'Face shields for lifting only.' },
	'shop/scheme ?/default': { 'notice.lastDays': '5' },
	'shop/sheets/[sheet]/edit ?/default': { title: 'Demo A, second printing' }
});
