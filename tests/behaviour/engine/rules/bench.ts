import { DEMO_SHEETS } from '../../../../src/lib/engine/coatings/sheets';
import type { Answer } from '../../../../src/lib/engine/grading/answer';
import type { Job } from '../../../../src/lib/engine/job/job';
import type { Part } from '../../../../src/lib/engine/job/part';
import type { Shop } from '../../../../src/lib/engine/shop/shop';
import * as u from '../../../../src/lib/engine/units/construct';

/** The demo sheets and default shop values, on the day of the sample job. */
export const shop: Shop = {
	on: '2026-11-25',
	sheets: Object.fromEntries(DEMO_SHEETS.map((sheet) => [sheet.id, sheet])),
	settings: {}
};

export const part = (over: Partial<Part> = {}): Part => ({
	name: { en: 'hinge plate', es: 'placa de bisagra' },
	count: 20,
	material: 'carbon-steel',
	magnetSticks: true,
	shape: 'plate',
	length: u.millimetres(120),
	width: u.millimetres(80),
	height: u.millimetres(3),
	thickness: u.millimetres(3),
	mass: u.kilograms(0.22),
	porous: false,
	cavity: 'none',
	features: [],
	masked: [],
	fitted: [],
	surface: 'oily',
	blindHole: false,
	tempered: null,
	humidStore: false,
	...over
});

type Over = Partial<Omit<Job, 'shelf' | 'bench' | 'weather' | 'wearer'>> & {
	shelf?: Partial<Job['shelf']>;
	bench?: Partial<Job['bench']>;
	weather?: Partial<Job['weather']>;
	wearer?: Partial<Job['wearer']>;
};

/** A sound, ordinary job: steel plates, sheet F, good weather, everything in order. Override what the case is about. */
export const job = ({ shelf, bench, weather, wearer, ...over }: Over = {}): Job => ({
	ticket: 'T-0001',
	customer: 'Demo customer',
	on: '2026-11-25',
	parts: [part()],
	coating: 'demo-f-catalysed',
	film: null,
	writtenCap: null,
	blastingAgreed: false,
	blastedAgo: null,
	residueLoops: 0,
	readings: [],
	...over,
	weather: {
		air: u.celsius(22),
		humidity: u.percent(50),
		part: u.celsius(21),
		paint: u.celsius(21),
		...weather
	},
	shelf: {
		lot: 'L-1',
		expires: '2027-06-30',
		hardenerExpires: '2027-06-30',
		hardenerState: 'clear',
		stored: u.celsius(20),
		warming: u.days(2),
		leftOverAge: null,
		...shelf
	},
	bench: {
		media: ['aluminium-oxide-fine', 'glass-bead'],
		cabinet: 'sound',
		blotter: 'clean',
		strainers: [u.micrometres(45), u.micrometres(125), u.micrometres(190)],
		handlePressure: u.bar(2),
		gauge: 'psi',
		ovenUnit: '°C',
		ovenVolume: u.cubicMetres(2),
		ovenSolventLimit: u.millilitres(60),
		boothSpeed: u.metresPerSecond(0.55),
		breathing: ['air-fed', 'half-mask'],
		clearance: u.minutes(5),
		...bench
	},
	wearer: { beard: false, fitTestValid: true, medicalClearanceValid: true, ...wearer }
});

export const quantity = (value: number): Answer => ({ kind: 'quantity', value: u.si(value), typed: '' });
export const choice = (option: string): Answer => ({ kind: 'choice', option });
export const choices = (...options: string[]): Answer => ({ kind: 'choices', options });
export const order = (...options: string[]): Answer => ({ kind: 'order', options });
