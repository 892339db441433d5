import {
	BREATHING,
	BLOTTERS,
	CABINETS,
	HARDENER_STATES,
	MEDIA,
	NOZZLES,
	READINGS_PER_SPOT,
	SPOTS_PER_AREA
} from '$lib/engine';
import { benchCard } from '$lib/i18n';
import { choice, choices, either, hinted, onTicket, quantity, type Fact, type Facts } from '../fact';

const LONGEST_LOT = 40;
const { label: en } = benchCard.en;
const { label: es } = benchCard.es;
const unitsAsMarked = (...units: string[]) =>
	Object.fromEntries(units.map((unit) => [unit, { en: unit, es: unit }]));

const spot = (at: number): Fact => ({
	kind: 'quantities',
	label: { en: en.spot(at + 1), es: es.spot(at + 1) },
	dimension: 'length',
	about: 25e-6,
	exactly: READINGS_PER_SPOT,
	...hinted('spot')
});

/** What was done to the parts before, and read on the batch before. */
export const doneFacts: Facts = {
	blastedAgo: quantity({ en: en.blastedAgo, es: es.blastedAgo }, 'duration', 14_400, {
		ifEmpty: null,
		...hinted('blastedAgo')
	}),
	residueLoops: quantity(onTicket('residue'), 'count', 1, { ifEmpty: 0, ...hinted('residueLoops') }),
	...Object.fromEntries(Array.from({ length: SPOTS_PER_AREA }, (_, at) => [`readings.${at}`, spot(at)]))
};

export const weatherFacts: Facts = {
	'weather.air': quantity(onTicket('air'), 'temperature', 295),
	'weather.humidity': quantity(onTicket('humidity'), 'fraction', 0.5),
	'weather.part': quantity(onTicket('part'), 'temperature', 294),
	'weather.paint': quantity(onTicket('paint'), 'temperature', 294)
};

/** Stands where the coating has no hardener. */
export const NO_HARDENER = 'none';

export const shelfFacts: Facts = {
	'shelf.lot': { kind: 'text', label: onTicket('lot'), longest: LONGEST_LOT },
	'shelf.expires': { kind: 'date', label: onTicket('expires') },
	'shelf.hardenerExpires': {
		kind: 'date',
		label: onTicket('hardenerExpires'),
		ifEmpty: null,
		...hinted('hardenerExpires')
	},
	'shelf.hardenerState': choice(
		onTicket('hardener'),
		{ ...HARDENER_STATES, [NO_HARDENER]: { en: en.hardenerNone, es: es.hardenerNone } },
		{ [NO_HARDENER]: null }
	),
	'shelf.stored': quantity(onTicket('stored'), 'temperature', 293),
	'shelf.warming': quantity(onTicket('warming'), 'duration', 14_400),
	'shelf.leftOverAge': quantity(onTicket('leftOver'), 'duration', 14_400, {
		ifEmpty: null,
		...hinted('leftOver')
	})
};

/** The shop's equipment as it is today. What a shop may not have looked up stays absent, and no rule speaks of it. */
export const benchFacts: Facts = {
	'bench.media': choices(onTicket('media'), MEDIA, 'media'),
	'bench.cabinet': choice(onTicket('cabinet'), CABINETS),
	'bench.compressor': quantity(onTicket('compressor'), 'flow', 0.024, {
		ifEmpty: 'absent',
		...hinted('compressor')
	}),
	'bench.nozzles': choices(onTicket('nozzles'), NOZZLES, 'nozzles', { ifNone: 'absent' }),
	'bench.blotter': choice(onTicket('blotter'), BLOTTERS),
	'bench.strainers': {
		kind: 'quantities',
		label: onTicket('strainers'),
		dimension: 'length',
		about: 100e-6,
		...hinted('strainers')
	},
	'bench.handlePressure': quantity(onTicket('handle'), 'pressure', 2e5, hinted('handle')),
	'bench.gauge': choice(onTicket('gauge'), unitsAsMarked('psi', 'bar')),
	'bench.ovenUnit': choice(onTicket('oven'), unitsAsMarked('°C', '°F')),
	'bench.ovenVolume': quantity(onTicket('ovenVolume'), 'volume', 2),
	'bench.ovenSolventLimit': quantity(onTicket('ovenLimit'), 'volume', 60e-6),
	'bench.boothSpeed': quantity(onTicket('booth'), 'speed', 0.5),
	'bench.breathing': choices(onTicket('breathing'), BREATHING, 'breathing'),
	'bench.clearance': quantity(onTicket('clearance'), 'duration', 360, hinted('clearance'))
};

export const wearerFacts: Facts = {
	'wearer.beard': either(onTicket('beard')),
	'wearer.fitTestValid': either(onTicket('fitTest'), 'valid', 'lapsed'),
	'wearer.medicalClearanceValid': either(onTicket('medical'), 'valid', 'lapsed')
};
