import { benchJob } from './bench-job';
import type { Stock } from './stock';

/** What a person would type into a form so that it is taken, beyond what the page has put there already. */
export type FilledIn = Readonly<Record<string, string>>;

const day = (ahead: number) => new Date(Date.now() + ahead * 86_400_000).toISOString().slice(0, 10);

/**
 * Per form action, entries that make the form right. Hostile entries are put into these one at a time, so that what is
 * refused is refused for that one entry; at the end the forms are sent as they are, and every one has to be taken.
 */
export const filledIn = (stock: Stock): Readonly<Record<string, FilledIn>> => ({
	'bench-card ?/default': benchJob(stock.sheet, day(0)),
	'practice ?/default': { breadth: '2', part: 'whole', support: 'full' },
	'proving ?/default': { competency: 'intake' },
	'incidents/new ?/default': { job: 'J-2001', person: 'demo-aprendiz', coating: stock.sheet, air: '21 °C' },
	'incidents/[id] ?/cause': { shown: 'kept' },
	'incidents/[id] ?/system': { evidence: 'Air was wet.', action: 'Drain fitted.' },
	'incidents/[id] ?/gap': { rules: 'gun-distance', evidence: 'Gun held at half the distance.' },
	'incidents/[id] ?/close': { jobsChecked: '5', repeats: '0' },
	'shop/people/new ?/default': { name: 'Rosa Iglesias', roles: 'trainee', secret: '7302', again: '7302' },
	'shop/people/[person] ?/secret': { secret: '7302', again: '7302' },
	'shop/people/[person] ?/roles': {
		roles: 'supervisor',
		secret: 'seven blue lanterns',
		again: 'seven blue lanterns'
	},
	'shop/people/[person] ?/access': { until: day(10) },
	'shop/values/[value] ?/default': { reason: 'Tried on twenty parts.' },
	'shop/values/gear ?/default': { oven: 'heat-gloves', reason: 'Face shields for lifting only.' },
	'shop/scheme ?/default': { 'notice.lastDays': '5' },
	'shop/sheets/[sheet]/edit ?/default': { title: 'Demo A, second printing' },
	'shop/import-sheet ?/default': { text: stock.sheetFile },
	'people/[person]/practical/[competency] ?/default': {
		...{ time: '00:00', panels: 'W1 W2', 'serial-0': 'DFT-204', 'due-0': day(90) },
		...{ 'gate-G1': 'met', 'gate-G8': 'met', 'gate-chart': 'not-met' },
		...{ result: 'refused', witnessed: 'yes' }
	}
});

/** Forms that are right but cannot be taken yet. */
export const NOT_YET: Readonly<Record<string, string>> = {
	'people/[person]/practical/[competency] ?/default':
		'the demo crew began training just now, so no work can have been watched since'
};

/** Forms that are right and enter nothing: what they ask for is the answer itself. */
export const ANSWERED: Readonly<Record<string, string>> = {
	'bench-card ?/default': 'the card is the answer, and a card is no record'
};
