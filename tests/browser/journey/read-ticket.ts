import {
	BLOTTERS,
	BREATHING,
	CABINETS,
	CAVITIES,
	DEMO_SHEETS,
	FEATURES,
	FILM_BASES,
	FITTED,
	HARDENER_STATES,
	MEDIA,
	NOZZLES,
	parseQuantity,
	SHAPES,
	si,
	SUBSTRATES,
	SURFACES,
	type Dimension,
	type Job,
	type Part
} from '$lib/engine';
import { format, ticket, type Lang } from '$lib/i18n';
import { keyOf, keysIn } from './table-words';
import type { Rows, TicketRows } from './ticket-rows';

const DAY = 86_400_000;
const NAMES = Object.fromEntries(Object.entries(SUBSTRATES).map(([id, { name }]) => [id, name]));

/** The days around today by how they are printed. */
const daysAround = (lang: Lang) =>
	new Map(
		Array.from({ length: 1601 }, (_, at) => {
			const day = new Date(Date.now() + (at - 800) * DAY).toISOString().slice(0, 10);
			return [format.date(day, lang), day] as const;
		})
	);
const DAYS = { en: daysAround('en'), es: daysAround('es') };

/** Reads what a ticket prints, the way a person does: by its labels, with the units printed beside the numbers. */
class Reading {
	constructor(
		readonly lang: Lang,
		readonly rows: Rows
	) {}

	words = (label: string) => {
		const found = this.rows.get(label);
		if (found === undefined) throw new Error(`the ticket has no "${label}"`);
		return found;
	};
	maybe = (label: string) => this.rows.get(label);
	number = <D extends Dimension>(text: string, dimension: D) => {
		const read = parseQuantity(text, dimension, { lang: this.lang });
		if (!read.ok) throw new Error(`"${text}" is no ${dimension}`);
		return read.value;
	};
	quantity = <D extends Dimension>(label: string, dimension: D) => this.number(this.words(label), dimension);
	maybeQuantity = <D extends Dimension>(label: string, dimension: D) => {
		const found = this.maybe(label);
		return found === undefined ? null : this.number(found, dimension);
	};
	day = (text: string) => {
		const day = DAYS[this.lang].get(text);
		if (!day) throw new Error(`"${text}" is no day near today`);
		return day;
	};
}

function readPart(rows: Rows, lang: Lang): Part {
	const words = ticket[lang];
	const on = new Reading(lang, rows);
	const material = on.words(words.material);
	const magnet = on.words(words.magnet);
	const [length, width, height] = on
		.words(words.size)
		.split(' × ')
		.map((size) => on.number(size, 'length'));
	return {
		name: { en: 'part', es: 'pieza' },
		count: Number(on.words(words.count)),
		material:
			material === words.unknownMaterial ? 'unknown' : (keyOf(NAMES, material, lang) as Part['material']),
		magnetSticks: magnet === words.notTried ? null : magnet === words.sticks,
		shape: keyOf(SHAPES, on.words(words.shape), lang),
		length: length!,
		width: width!,
		height: height!,
		thickness: on.quantity(words.thickness, 'length'),
		mass: on.quantity(words.mass, 'mass'),
		porous: on.words(words.porous) === words.porousYes,
		cavity: keyOf(CAVITIES, on.words(words.cavity), lang),
		features: keysIn(FEATURES, on.words(words.features), lang),
		masked: keysIn(FEATURES, on.words(words.masked), lang),
		fitted: keysIn(FITTED, on.words(words.fitted), lang),
		surface: keyOf(SURFACES, on.words(words.surface), lang),
		blindHole: on.words(words.blindHole) === words.yes,
		tempered: on.maybeQuantity(words.tempered, 'temperature'),
		humidStore: on.maybe(words.humidStore) !== undefined
	};
}

function readFilm(text: string, lang: Lang): Job['film'] {
	if (text === ticket[lang].filmFromSheet) return null;
	const basis = keysIn(FILM_BASES, text, lang)[0]!;
	const [, low, high, unit] = /^([\d.]+)–([\d.]+) (\S+),/.exec(text) ?? [];
	const on = new Reading(lang, new Map());
	return { min: on.number(`${low} ${unit}`, 'length'), max: on.number(`${high} ${unit}`, 'length'), basis };
}

/** The job on a ticket, from nothing but what is printed there. */
export function readTicket({ number, head, sections }: TicketRows, lang: Lang): Job {
	const words = ticket[lang];
	const at = (title: string) => new Reading(lang, sections.get(title) ?? new Map());
	const [top, weather, shelf, bench, person] = [
		new Reading(lang, head),
		at(words.weather),
		at(words.shelf),
		at(words.equipment),
		at(words.person)
	];
	const coating = DEMO_SHEETS.find(({ title }) => title === top.words(words.coating));
	if (!coating) throw new Error(`no demo sheet is called ${top.words(words.coating)}`);
	const writtenCap = top.words(words.writtenCap);
	const ago = weather.maybe(words.blastedAgo);
	const hardener = shelf.maybe(words.hardener);
	const hardenerExpires = shelf.maybe(words.hardenerExpires);
	const readings = weather.maybe(words.readings);
	const nozzles = bench.maybe(words.nozzles);
	return {
		ticket: number,
		customer: top.words(words.customer),
		on: top.day(top.words(words.date)),
		parts: [...sections]
			.filter(([title]) => title.startsWith(`${words.parts}:`))
			.map(([, rows]) => readPart(rows, lang)),
		coating: coating.id,
		film: readFilm(top.words(words.film), lang),
		writtenCap: writtenCap === words.none ? null : top.number(writtenCap, 'temperature'),
		blastingAgreed: top.words(words.blastingAgreed) === words.yes,
		weather: {
			air: weather.quantity(words.air, 'temperature'),
			humidity: weather.quantity(words.humidity, 'fraction'),
			part: weather.quantity(words.part, 'temperature'),
			paint: weather.quantity(words.paint, 'temperature')
		},
		blastedAgo: ago === undefined ? null : weather.number(ago.replace(/^hace | ago$/g, ''), 'duration'),
		residueLoops: Number(weather.maybe(words.residue) ?? 0),
		shelf: {
			lot: shelf.words(words.lot),
			expires: shelf.day(shelf.words(words.expires)),
			hardenerExpires: hardenerExpires === undefined ? null : shelf.day(hardenerExpires),
			hardenerState: hardener === undefined ? null : keyOf(HARDENER_STATES, hardener, lang),
			stored: shelf.quantity(words.stored, 'temperature'),
			warming: shelf.quantity(words.warming, 'duration'),
			leftOverAge: shelf.maybeQuantity(words.leftOver, 'duration')
		},
		bench: {
			media: keysIn(MEDIA, bench.words(words.media), lang),
			cabinet: keyOf(CABINETS, bench.words(words.cabinet), lang),
			compressor: bench.maybeQuantity(words.compressor, 'flow') ?? undefined,
			nozzles: nozzles === undefined ? undefined : keysIn(NOZZLES, nozzles, lang),
			blotter: keyOf(BLOTTERS, bench.words(words.blotter), lang),
			strainers: bench
				.words(words.strainers)
				.split(', ')
				.map((opening) => bench.number(opening, 'length')),
			handlePressure: bench.quantity(words.handle, 'pressure'),
			gauge: bench.words(words.gauge) as Job['bench']['gauge'],
			ovenUnit: bench.words(words.oven) as Job['bench']['ovenUnit'],
			ovenVolume: bench.quantity(words.ovenVolume, 'volume'),
			ovenSolventLimit: bench.quantity(words.ovenLimit, 'volume'),
			boothSpeed: bench.quantity(words.booth, 'speed'),
			breathing: keysIn(BREATHING, bench.words(words.breathing), lang),
			clearance: bench.quantity(words.clearance, 'duration')
		},
		wearer: {
			beard: person.words(words.beard) === words.yes,
			fitTestValid: person.words(words.fitTest) === words.valid,
			medicalClearanceValid: person.words(words.medical) === words.valid
		},
		readings:
			readings === undefined
				? []
				: readings
						.split(' | ')
						.map((spot) => spot.split(', ').map((one) => weather.number(one, 'length') ?? si(0)))
	};
}
