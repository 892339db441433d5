import psychrolib from 'psychrolib';
import {
	SHOP_VALUES,
	type DataSheet,
	type FieldId,
	type Job,
	type LineId,
	type Plan,
	type Shop,
	type ShopValueId,
	type SubstrateId
} from '../../src/lib/engine/index';
import { printed } from './printed';

psychrolib.SetUnitSystem(psychrolib.SI);

/*
 * Looks at a finished plan with nothing but the ticket, the lines of the data sheet as printed and the shop's own
 * numbers: no rule, no expectation and no formula of the engine is used here.
 */

const LAMINATES: readonly string[] = ['carbon-laminate', 'glass-laminate'];
const POLYMERS: readonly string[] = ['abs', 'polycarbonate', 'polyamide', 'polypropylene', 'peek'];
const IRON_FREE: readonly string[] = [
	'stainless-steel',
	'aluminium-6061',
	'aluminium-7075',
	'aluminium-casting',
	'anodised-aluminium',
	'magnesium',
	'titanium',
	'brass',
	'zinc-die-cast'
];

/** Highest blast pressure by material; what is not listed is never blasted. */
const BLAST_MOST: Readonly<Partial<Record<SubstrateId, ShopValueId>>> = {
	'carbon-steel': 'blast.pressure.steel',
	'spring-steel': 'blast.pressure.steel',
	'stainless-steel': 'blast.pressure.stainless',
	titanium: 'blast.pressure.titanium',
	'aluminium-6061': 'blast.pressure.aluminium',
	'aluminium-7075': 'blast.pressure.aluminium',
	'aluminium-casting': 'blast.pressure.aluminium',
	'anodised-aluminium': 'blast.pressure-most.anodised',
	brass: 'blast.pressure.brass',
	'zinc-die-cast': 'blast.pressure-most.zinc',
	polyamide: 'blast.pressure-most.polymer',
	peek: 'blast.pressure-most.polymer'
};

/** Fields whose number the sheet prints. */
const PRINTED: readonly (readonly [FieldId, LineId])[] = [
	['agitate-time', 'agitate'],
	['stir-time', 'stir'],
	['induction-time', 'induction'],
	['strainer', 'strainer'],
	['cup-time', 'viscosity'],
	['thinner-share', 'thinner'],
	['cap-pressure', 'cap-pressure'],
	['gun-distance', 'distance'],
	['coats', 'coats'],
	['coat-interval', 'interval'],
	['flash-time', 'flash'],
	['rubs', 'solvent-rubs'],
	['adhesion-class', 'adhesion-class']
];

const PSI = 6894.757293168;
/** What an approximation of the dew point and reading to a tenth may differ from a reference library. */
const DEW_ROOM = 0.4;

type Look = { readonly job: Job; readonly shop: Shop; readonly sheet: DataSheet; readonly plan: Plan };

/** A shop's own number: the top of a window, or the single one. */
function shopMost(shop: Shop, id: ShopValueId): number {
	const value: { readonly value?: number; readonly max?: number } = shop.settings[id] ?? SHOP_VALUES[id];
	return (value.value ?? value.max)!;
}

const numberIn = ({ plan }: Look, id: FieldId): number | undefined => {
	const answer = plan.fields.find(({ field }) => field === id)?.answer;
	return answer?.kind === 'quantity' ? answer.value : undefined;
};
const optionIn = ({ plan }: Look, id: FieldId): string | undefined => {
	const answer = plan.fields.find(({ field }) => field === id)?.answer;
	return answer?.kind === 'choice' ? answer.option : undefined;
};

const same = (a: number, b: number) => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b), 1e-9);
const above = (a: number, b: number) => a > b && !same(a, b);

/** Says so where the number in a field lies outside; silent where the field or the limit is not there. */
function outside(look: Look, id: FieldId, what: string, limit: { min?: number; max?: number } | undefined) {
	const value = numberIn(look, id);
	if (value === undefined || !limit) return [];
	const { min = -Infinity, max = Infinity } = limit;
	return above(min, value) || above(value, max) ? [`${id} ${value} outside ${what} ${min} to ${max}`] : [];
}

function sheetProblems(look: Look): string[] {
	const { job, sheet } = look;
	const names: readonly string[] = job.parts.map(({ material }) => material);
	const kind = names.some((name) => LAMINATES.includes(name))
		? 'laminate'
		: names.some((name) => POLYMERS.includes(name))
			? 'polymer'
			: 'metal';
	const line = (id: LineId) => printed(sheet, id, job.on);
	const fume = line('fume-above')?.max;
	const cure = numberIn(look, 'cure-temperature');
	return [
		...PRINTED.flatMap(([id, of]) => outside(look, id, 'the sheet', line(of))),
		...outside(look, 'cure-temperature', 'the sheet', line(`cure-${kind}-temperature`)),
		...outside(look, 'cure-hold', 'the sheet', line(`cure-${kind}-hold`)),
		...(sheet.thinner === null ? outside(look, 'thinner-share', 'no thinner', { max: 0 }) : []),
		...(fume !== undefined && cure !== undefined && cure >= fume ? [`cure ${cure} makes fume`] : [])
	];
}

/** The dry film that the wet film of one coat leaves, times the fewest coats. */
function filmProblems(look: Look): string[] {
	const { job, sheet } = look;
	const [solids, coats, film] = (['volume-solids', 'coats', 'dry-film'] as const).map((id) =>
		printed(sheet, id, job.on)
	);
	const wet = numberIn(look, 'wet-film');
	if (wet === undefined || !solids || !coats) return [];
	const dry = wet * solids.max * coats.min;
	return [['the sheet', film] as const, ['the drawing', job.film ?? undefined] as const].flatMap(
		([what, limit]) =>
			limit && (above(limit.min, dry) || above(dry, limit.max))
				? [`film ${dry} outside ${what} ${limit.min} to ${limit.max}`]
				: []
	);
}

function mixProblems(look: Look): string[] {
	const { job, sheet } = look;
	const line = (id: LineId) => printed(sheet, id, job.on);
	const [band, base, hardener] = [line('mix-ratio-band'), line('density-base'), line('density-hardener')];
	const [volume, mass] = [numberIn(look, 'hardener-volume'), numberIn(look, 'hardener-mass')];
	const heavier = base && hardener && base.min / hardener.min;
	const byWeight = sheet.basis === 'weight';
	const ratios = [
		volume === undefined ? undefined : (500e-6 / volume) * (byWeight ? (heavier ?? NaN) : 1),
		mass === undefined ? undefined : 0.5 / mass / (byWeight ? 1 : (heavier ?? NaN))
	].filter((ratio) => ratio !== undefined);
	const life = line('pot-life');
	const warm = job.weather.paint >= (line('pot-life-at')?.min ?? Infinity);
	return [
		...ratios
			.filter((ratio) => band && !(!above(band.min, ratio) && !above(ratio, band.max)))
			.map((ratio) => `mixed ${ratio}:1, outside the band ${band?.min} to ${band?.max}`),
		...(warm ? outside(look, 'use-within', 'the pot life', { max: life?.max ?? Infinity }) : [])
	];
}

/** Highest temperature of the parts: the customer's word or the materials', and whatever is fitted or tempered. */
function partCap({ job, shop }: Look): number {
	const materials = job.parts.map(({ material }) =>
		material === 'unknown' ? Infinity : shopMost(shop, `cap.${material}`)
	);
	return Math.min(
		...(job.writtenCap === null ? materials : [job.writtenCap]),
		...job.parts.flatMap(({ fitted }) => fitted.map((item) => shopMost(shop, `cap.${item}`))),
		...job.parts.map(({ tempered }) =>
			tempered === null ? Infinity : tempered - shopMost(shop, 'cap.below-temper')
		)
	);
}

function partProblems(look: Look): string[] {
	const { job, shop } = look;
	const cap = { max: partCap(look) };
	const tape = optionIn(look, 'mask-tape') as 'paper' | 'polyester' | 'polyimide' | undefined;
	const names = job.parts.map(({ material }) => material).filter((name) => name !== 'unknown');
	const blast = names.map((name) => BLAST_MOST[name]);
	const medium = optionIn(look, 'blast-media');
	const blasted = numberIn(look, 'blast-pressure') !== undefined;
	const iron = medium === 'steel-grit' && names.some((name) => IRON_FREE.includes(name));
	const onBench = !blasted || medium === 'scuff' || job.bench.media.some((one) => one === medium);
	return [
		...(['part-cap', 'cure-temperature', 'bake-out-temperature'] as const).flatMap((id) =>
			outside(look, id, 'the part limit', cap)
		),
		...(tape
			? outside(look, 'cure-temperature', `${tape} tape`, { max: shopMost(shop, `tape.${tape}`) })
			: []),
		...blast.flatMap((id) =>
			id ? outside(look, 'blast-pressure', id, { max: shopMost(shop, id) }) : blasted ? ['never blasted'] : []
		),
		...(blasted && names.includes('anodised-aluminium') && !job.blastingAgreed
			? ['blasting not agreed']
			: []),
		...(iron || medium === 'silica-sand' ? [`blasted with ${medium}`] : []),
		...(onBench ? [] : [`${medium} is not on the bench`])
	];
}

function safetyProblems(look: Look): string[] {
	const { job, sheet } = look;
	const { air, humidity, part } = job.weather;
	const { bench, shelf, wearer } = job;
	const dew = psychrolib.GetTDewPointFromRelHum(air - 273.15, humidity) + 273.15;
	// below freezing the library gives the frost point, which is another number
	const coldest = dew + shopMost(look.shop, 'spray.dew-point-margin');
	const window = (id: LineId) => printed(sheet, id, job.on) ?? { min: -Infinity, max: Infinity };
	const out = (value: number, { min, max }: { min: number; max: number }) =>
		above(min, value) || above(value, max);
	const go = optionIn(look, 'spray-go') === 'go';
	const share = printed(sheet, 'solvent-share', job.on)?.max ?? 1;
	const old = shelf.expires < job.on || (sheet.parts === 2 && (shelf.hardenerExpires ?? job.on) < job.on);
	const isocyanate = sheet.hazards.includes('isocyanate');
	const says = (id: FieldId, option: string) => optionIn(look, id) === option;
	return [
		...outside(look, 'blow-off-pressure', 'the law', { max: 30 * PSI }),
		...(same(numberIn(look, 'blow-off-pressure') ?? 0, 30 * PSI) ? ['blow-off at 30 psi'] : []),
		...outside(look, 'cap-pressure', 'the law', { max: 10.05 * PSI }),
		...outside(look, 'clearance-wait', 'the smoke test', { min: bench.clearance }),
		...(dew > 273.15
			? outside(look, 'surface-minimum', 'dew point and margin', { min: coldest - DEW_ROOM })
			: []),
		...outside(look, 'oven-wet-volume', 'the plate', { max: bench.ovenSolventLimit / share }),
		...(go && dew > 273.15 && part < coldest - DEW_ROOM ? ['sprayed on a part below the dew point'] : []),
		...(go && out(air, window('air-temperature')) ? ['sprayed in air the sheet rules out'] : []),
		...(go && out(humidity, window('humidity')) ? ['sprayed in humidity the sheet rules out'] : []),
		...(old && says('lot-action', 'use') ? ['out of date and used'] : []),
		...(bench.boothSpeed < 0.508 - 1e-9 && says('booth-action', 'spray') ? ['sprayed in a slack booth'] : []),
		...(bench.cabinet !== 'sound' && says('cabinet-action', 'blast') ? ['blasted in a torn cabinet'] : []),
		...(!wearer.medicalClearanceValid && says('wearer-action', 'spray') ? ['sprayed without clearance'] : []),
		...(isocyanate && !says('spray-breathing', 'air-fed') ? ['isocyanate without air-fed hood'] : [])
	];
}

const STOPS: readonly (readonly [string, (part: Job['parts'][number]) => boolean])[] = [
	['an unknown material', ({ material }) => material === 'unknown'],
	['magnesium', ({ material }) => material === 'magnesium'],
	['a sealed cavity', ({ cavity }) => cavity === 'sealed'],
	['an old coating', ({ surface }) => surface === 'old-coating'],
	['yellow plating', ({ surface }) => surface === 'yellow-plating'],
	['fitted items', ({ fitted }) => fitted.length > 0]
];

/** What of a plan lies outside the data sheet, a part's limits or what keeps people unhurt; empty where nothing does. */
export function limitsBroken(job: Job, shop: Shop, plan: Plan): string[] {
	const sheet = shop.sheets[job.coating]!;
	const look: Look = { job, shop, sheet, plan };
	const stops = STOPS.filter(([, stop]) => plan.decision === 'accept' && job.parts.some(stop));
	return [
		...sheetProblems(look),
		...filmProblems(look),
		...mixProblems(look),
		...partProblems(look),
		...safetyProblems(look),
		...stops.map(([what]) => `accepted with ${what}`)
	];
}
