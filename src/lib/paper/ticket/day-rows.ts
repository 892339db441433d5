import {
	BLOTTERS,
	BREATHING,
	CABINETS,
	HARDENER_STATES,
	MEDIA,
	NOZZLES,
	type Job,
	type Shop
} from '$lib/engine';
import { nozzleChart } from './nozzle-chart';
import type { Row, TicketWords } from './words';

/** Readings of the day, and what was done to the parts before. */
export const weatherRows = (job: Job, { words, row, wide, quantity }: TicketWords): Row[] => [
	row(words.air, quantity(job.weather.air, 'temperature')),
	row(words.humidity, quantity(job.weather.humidity, 'fraction')),
	row(words.part, quantity(job.weather.part, 'temperature')),
	row(words.paint, quantity(job.weather.paint, 'temperature')),
	...(job.blastedAgo === null
		? []
		: [row(words.blastedAgo, words.ago(quantity(job.blastedAgo, 'duration')))]),
	...(job.residueLoops ? [row(words.residue, String(job.residueLoops))] : []),
	...(job.readings.length
		? [
				wide(
					words.readings,
					job.readings
						.map((spot) => spot.map((reading) => quantity(reading, 'length')).join(', '))
						.join(' | ')
				)
			]
		: [])
];

/** The coating on the shelf. */
export const shelfRows = ({ shelf }: Job, { words, row, date, quantity, name }: TicketWords): Row[] => [
	row(words.lot, shelf.lot),
	row(words.expires, date(shelf.expires)),
	...(shelf.hardenerExpires ? [row(words.hardenerExpires, date(shelf.hardenerExpires))] : []),
	...(shelf.hardenerState ? [row(words.hardener, name(HARDENER_STATES, shelf.hardenerState))] : []),
	row(words.stored, quantity(shelf.stored, 'temperature')),
	row(words.warming, quantity(shelf.warming, 'duration')),
	...(shelf.leftOverAge === null ? [] : [row(words.leftOver, quantity(shelf.leftOverAge, 'duration'))])
];

/** The equipment of the day. */
export function benchRows(job: Job, shop: Shop, pen: TicketWords): Row[] {
	const { bench } = job;
	const { words, row, wide, quantity, engraved, name, names } = pen;
	return [
		wide(words.media, names(MEDIA, bench.media)),
		row(words.cabinet, name(CABINETS, bench.cabinet)),
		...(bench.compressor === undefined
			? []
			: [row(words.compressor, engraved(bench.compressor, 'flow', 'm³/h'))]),
		...(bench.nozzles === undefined
			? []
			: [
					wide(words.nozzles, names(NOZZLES, bench.nozzles)),
					{ ...wide(words.nozzleChart, nozzleChart(job, shop, pen)), chart: true }
				]),
		row(words.blotter, name(BLOTTERS, bench.blotter)),
		wide(words.strainers, bench.strainers.map((opening) => quantity(opening, 'length')).join(', ')),
		row(words.handle, quantity(bench.handlePressure, 'pressure')),
		row(words.gauge, bench.gauge),
		row(words.oven, bench.ovenUnit),
		row(words.ovenVolume, quantity(bench.ovenVolume, 'volume')),
		row(words.ovenLimit, engraved(bench.ovenSolventLimit, 'volume', 'mL')),
		row(words.booth, quantity(bench.boothSpeed, 'speed')),
		wide(words.breathing, names(BREATHING, bench.breathing)),
		row(words.clearance, quantity(bench.clearance, 'duration'))
	];
}

/** The person at the gun, as far as protection depends on it. */
export const wearerRows = ({ wearer }: Job, { words, row }: TicketWords): Row[] => [
	row(words.beard, wearer.beard ? words.yes : words.no),
	row(words.fitTest, wearer.fitTestValid ? words.valid : words.lapsed),
	row(words.medical, wearer.medicalClearanceValid ? words.valid : words.lapsed)
];
