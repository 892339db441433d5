import {
	AUTHORITIES,
	AUTHORITY_NAMES,
	field,
	startDays,
	STATIONS,
	type DataSheet,
	type Job,
	type Plan,
	type PlannedField,
	type Station
} from '$lib/engine';
import { benchCard, format, say } from '$lib/i18n';
import { ticketView, type Reader } from '$lib/paper';
import type { App } from '../app';
import type { ShopInForce } from '../shop-in-force';
import { nameOf } from '../shown-text';
import { shopTime } from '../standing/shop-time';
import type { CardAccess, StationScope } from './access';
import { cautionsOf } from './cautions';
import { lineView } from './line-view';
import { printScale } from './print-scale';

/** Enough of a hash to find what it names among the shop's. */
const SHORT_HASH = 12;

/** What the decision asks is said in the head of the card, and here it is to start. */
const SAID_IN_HEAD: readonly string[] = ['decision', 'ask-about'];

const isSafety = ({ field: id }: PlannedField) => field(id).competency === 'safety';

/** The fields of a station that a person is given: safety is everybody's, the rest as far as the person is signed for. */
function givenAt(station: Station, scope: StationScope, fields: readonly PlannedField[]) {
	const here = fields.filter(({ field: id }) => field(id).station === station && !SAID_IN_HEAD.includes(id));
	return {
		safety: here.filter(isSafety),
		others: scope.given === 'none' ? [] : here.filter((one) => !isSafety(one))
	};
}

/** What the card rests on: the coating's sheet as it holds today, the rules and the shop values in force. */
function restsOn(sheet: DataSheet, plan: Plan, { shop, refs }: ShopInForce, { lang }: Reader) {
	const words = benchCard[lang];
	const ref = refs.sheets.find((one) => one.sheet === sheet.id);
	if (!ref) throw new Error(`the sheet ${sheet.id} is in force and has no revision`);
	const since = startDays(sheet).findLast((day) => day <= shop.on) ?? ref.effective;
	const revision = words.revision(ref.revision, format.date(since, lang));
	const hash = (text: string) => text.slice(0, SHORT_HASH);
	return [
		{ label: words.sheet, value: `${sheet.id}, ${revision}, ${hash(ref.contentHash)}` },
		{ label: words.engine, value: plan.engine },
		{ label: words.values, value: hash(refs.valuesHash) }
	];
}

/** What a card is made of. */
export type Worked = {
	readonly job: Job;
	readonly sheet: DataSheet;
	/** Of a job that may start. */
	readonly plan: Plan;
	readonly inForce: ShopInForce;
	readonly access: CardAccess;
	readonly person: string;
};

/** The plan of a job as it is printed for one person. It is the engine's plan and nothing else. */
export function cardView(app: App, { job, sheet, plan, inForce, access, person }: Worked, reader: Reader) {
	const { lang } = reader;
	const words = benchCard[lang];
	const told = new Set<string>();
	const given = STATIONS.map((station) => givenAt(station, access.stations[station], plan.fields));
	const stations = STATIONS.map((station, at) => ({
		station,
		...access.stations[station],
		safety: (given[at]?.safety ?? []).map((one) => lineView(one, told, reader)),
		lines: (given[at]?.others ?? []).map((one) => lineView(one, told, reader))
	}));
	const shown = given.flatMap(({ safety, others }) => [...safety, ...others]);
	const lines = stations.flatMap(({ safety: first, lines: rest }) => [...first, ...rest]);
	const cautions = cautionsOf(shown, lines, sheet, reader);
	return {
		ticket: ticketView(job, inForce.shop, reader),
		title: words.titled(job.ticket),
		parts: format.list(
			job.parts.map(({ count, name }) => words.counted(count, say(name, lang))),
			lang
		),
		day: format.date(job.on, lang),
		customer: job.customer,
		coating: { title: sheet.title, lang: sheet.lang },
		demo: sheet.demo,
		person: nameOf(app, person, lang),
		workedOutAt: shopTime(app, app.now().toISOString(), lang),
		restsOn: restsOn(sheet, plan, inForce, reader),
		supervised: stations
			.filter(({ given }) => given === 'supervised')
			.map(({ name, because }) => words.supervisedFor(name, because)),
		stations,
		cautions,
		printScale: printScale(lines, cautions.today.length + cautions.gaveWay.length),
		order: AUTHORITIES.map((authority) => say(AUTHORITY_NAMES[authority], lang)).join(' > ')
	};
}

export type BenchCard = ReturnType<typeof cardView>;
