import { format, METRIC, unitFor, type Dimension, type Job, type Part } from '$lib/engine';

type Typed = string | readonly string[];

const amount = (value: number, dimension: Dimension) =>
	format(value, dimension, unitFor(value, dimension, METRIC), 'en').replace(/\s/g, ' ');
const many = (values: readonly number[], dimension: Dimension) =>
	values.map((value) => amount(value, dimension)).join('; ');
const orEmpty = (value: number | null, dimension: Dimension) =>
	value === null ? '' : amount(value, dimension);
const yesNo = (yes: boolean) => (yes ? 'yes' : 'no');

const ofPart = ({ name, magnetSticks, ...part }: Part): Record<string, Typed> => ({
	name: name.en,
	count: String(part.count),
	material: part.material,
	magnetSticks: magnetSticks === null ? 'not-tried' : magnetSticks ? 'sticks' : 'does-not',
	shape: part.shape,
	length: amount(part.length, 'length'),
	width: amount(part.width, 'length'),
	height: amount(part.height, 'length'),
	thickness: amount(part.thickness, 'length'),
	mass: amount(part.mass, 'mass'),
	surface: part.surface,
	cavity: part.cavity,
	porous: yesNo(part.porous),
	features: part.features,
	masked: part.masked,
	fitted: part.fitted,
	blindHole: yesNo(part.blindHole),
	tempered: orEmpty(part.tempered, 'temperature'),
	humidStore: yesNo(part.humidStore)
});

/** A job as somebody types it into the form of the bench card, in metric units: name to text, or to the boxes ticked. */
export function entriesOfJob(job: Job, parts: 1 | 2 = 2): Record<string, Typed> {
	const { weather, shelf, bench, wearer, film } = job;
	return {
		lines: String(job.parts.length),
		ticket: job.ticket,
		customer: job.customer,
		coating: job.coating,
		'film.basis': film?.basis ?? 'sheet',
		'film.min': film ? amount(film.min, 'length') : '',
		'film.max': film ? amount(film.max, 'length') : '',
		writtenCap: orEmpty(job.writtenCap, 'temperature'),
		blastingAgreed: yesNo(job.blastingAgreed),
		...Object.fromEntries(
			job.parts.flatMap((part, at) =>
				Object.entries(ofPart(part)).map(([name, typed]) => [`parts.${at}.${name}`, typed] as const)
			)
		),
		blastedAgo: orEmpty(job.blastedAgo, 'duration'),
		residueLoops: job.residueLoops ? String(job.residueLoops) : '',
		...Object.fromEntries(job.readings.map((spot, at) => [`readings.${at}`, many(spot, 'length')] as const)),
		'weather.air': amount(weather.air, 'temperature'),
		'weather.humidity': amount(weather.humidity, 'fraction'),
		'weather.part': amount(weather.part, 'temperature'),
		'weather.paint': amount(weather.paint, 'temperature'),
		'shelf.lot': shelf.lot,
		'shelf.expires': shelf.expires,
		'shelf.hardenerExpires': parts === 2 ? (shelf.hardenerExpires ?? '') : '',
		'shelf.hardenerState': parts === 2 ? (shelf.hardenerState ?? 'none') : 'none',
		'shelf.stored': amount(shelf.stored, 'temperature'),
		'shelf.warming': amount(shelf.warming, 'duration'),
		'shelf.leftOverAge': orEmpty(shelf.leftOverAge, 'duration'),
		'bench.media': bench.media,
		'bench.cabinet': bench.cabinet,
		'bench.compressor': bench.compressor === undefined ? '' : amount(bench.compressor, 'flow'),
		'bench.nozzles': bench.nozzles ?? [],
		'bench.blotter': bench.blotter,
		'bench.strainers': many(bench.strainers, 'length'),
		'bench.handlePressure': amount(bench.handlePressure, 'pressure'),
		'bench.gauge': bench.gauge,
		'bench.ovenUnit': bench.ovenUnit,
		'bench.ovenVolume': amount(bench.ovenVolume, 'volume'),
		'bench.ovenSolventLimit': amount(bench.ovenSolventLimit, 'volume'),
		'bench.boothSpeed': amount(bench.boothSpeed, 'speed'),
		'bench.breathing': bench.breathing,
		'bench.clearance': amount(bench.clearance, 'duration'),
		'wearer.beard': yesNo(wearer.beard),
		'wearer.fitTestValid': yesNo(wearer.fitTestValid),
		'wearer.medicalClearanceValid': yesNo(wearer.medicalClearanceValid)
	};
}
