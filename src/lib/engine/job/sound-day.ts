import type { IsoDate } from '../coatings/sheet';
import {
	celsius,
	cubicMetres,
	cubicMetresPerHour,
	days,
	metresPerSecond,
	micrometres,
	millilitres,
	millimetres,
	minutes,
	percent,
	bar,
	kilograms
} from '../units/construct';
import type { Job } from './job';
import type { Part } from './part';

/** A date of the year after (or before) that of a day, so that a lot is in date whenever the example is looked at. */
export const inYear = (on: IsoDate, by: number): IsoDate => `${Number(on.slice(0, 4)) + by}-06-15`;

/** An ordinary part: a small steel plate, oily from machining. */
export const PLATE: Part = {
	name: { en: 'hinge plate', es: 'placa de bisagra' },
	count: 20,
	material: 'carbon-steel',
	magnetSticks: true,
	shape: 'plate',
	length: millimetres(120),
	width: millimetres(80),
	height: millimetres(3),
	thickness: millimetres(3),
	mass: kilograms(0.22),
	porous: false,
	cavity: 'none',
	features: [],
	masked: [],
	fitted: [],
	surface: 'oily',
	blindHole: false,
	tempered: null,
	humidStore: false
};

/** A day on which nothing is wrong: weather, shelf, equipment and person all fit. The coating is left open. */
export const soundDay = (on: IsoDate): Omit<Job, 'ticket' | 'parts' | 'coating'> => ({
	customer: 'Demo customer',
	on,
	film: null,
	writtenCap: null,
	blastingAgreed: false,
	weather: { air: celsius(22), humidity: percent(50), part: celsius(21), paint: celsius(21) },
	blastedAgo: null,
	residueLoops: 0,
	shelf: {
		lot: 'L-2041',
		expires: inYear(on, 1),
		hardenerExpires: inYear(on, 1),
		hardenerState: 'clear',
		stored: celsius(20),
		warming: days(2),
		leftOverAge: null
	},
	bench: {
		media: ['aluminium-oxide-fine', 'glass-bead', 'plastic-media', 'steel-grit', 'silica-sand'],
		cabinet: 'sound',
		compressor: cubicMetresPerHour(87),
		nozzles: ['bore-3-2', 'bore-4-8', 'bore-6-4'],
		blotter: 'clean',
		strainers: [50, 75, 106, 125, 150, 190].map(micrometres),
		handlePressure: bar(2),
		gauge: 'psi',
		ovenUnit: '°C',
		ovenVolume: cubicMetres(2),
		ovenSolventLimit: millilitres(60),
		boothSpeed: metresPerSecond(0.6),
		breathing: ['air-fed', 'half-mask', 'dust-mask'],
		clearance: minutes(6)
	},
	wearer: { beard: false, fitTestValid: true, medicalClearanceValid: true },
	readings: []
});
