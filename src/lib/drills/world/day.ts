import {
	celsius,
	cubicMetres,
	cubicMetresPerHour,
	days,
	metresPerSecond,
	micrometres,
	millilitres,
	minutes,
	percent,
	pascal,
	type DataSheet,
	type Job
} from '$lib/engine';
import type { Random } from '../random';

/** Calendar days added to 'YYYY-MM-DD'. */
export const daysAfter = (date: string, by: number) =>
	new Date(Date.parse(`${date}T00:00:00Z`) + by * 86_400_000).toISOString().slice(0, 10);

/** Plates of small compressors, m³/h of free air, clear of what any nozzle needs at the usual pressures. */
const COMPRESSORS = [32, 60, 87, 130] as const;

/** Bores beside the narrowest. */
const WIDER = ['bore-4-8', 'bore-6-4', 'bore-7-9', 'bore-9-5'] as const;

/** A compressor, and a shelf of nozzles of which at least the narrowest runs on it. */
const compressedAir = (random: Random) => ({
	compressor: cubicMetresPerHour(random.pick(COMPRESSORS)),
	nozzles: ['bore-3-2' as const, ...random.some(WIDER, random.integer(1, 2)).toSorted()]
});

/** A day on which nothing is wrong: weather, shelf, equipment and person all fit. */
export function soundDay(on: string, sheet: DataSheet, random: Random) {
	const air = random.between(19, 25, 0.5);
	const expires = () => daysAfter(on, random.between(20, 300, 1));
	return {
		weather: {
			air: celsius(air),
			humidity: percent(random.between(42, 58, 1)),
			part: celsius(air - random.between(0, 1, 0.5)),
			paint: celsius(random.between(19, 23, 0.5))
		},
		blastedAgo: null,
		residueLoops: 0,
		shelf: {
			lot: `L${random.between(1000, 9999, 1)}`,
			expires: expires(),
			hardenerExpires: sheet.parts === 2 ? expires() : null,
			hardenerState: sheet.parts === 2 ? ('clear' as const) : null,
			stored: celsius(random.between(18, 23, 1)),
			warming: days(random.between(1, 5, 1)),
			leftOverAge: null
		},
		bench: {
			media: ['aluminium-oxide-fine', 'glass-bead', 'plastic-media'],
			cabinet: 'sound',
			...compressedAir(random),
			blotter: 'clean',
			strainers: [50, 75, 106, 125, 150, 190].map(micrometres),
			handlePressure: pascal(random.between(1.6, 2.6, 0.1) * 1e5),
			gauge: random.pick(['psi', 'bar'] as const),
			ovenUnit: random.pick(['°C', '°F'] as const),
			ovenVolume: cubicMetres(random.between(0.5, 4, 0.5)),
			ovenSolventLimit: millilitres(random.between(20, 120, 5)),
			boothSpeed: metresPerSecond(random.between(0.52, 0.75, 0.01)),
			breathing: ['air-fed', 'half-mask'],
			clearance: minutes(random.between(2, 12, 1))
		},
		wearer: { beard: false, fitTestValid: true, medicalClearanceValid: true },
		readings: []
	} satisfies Partial<Job>;
}
