import { READINGS_PER_SPOT, SPOTS_PER_AREA, type Dimension, type Text } from '$lib/engine';
import type { CompetencyId } from './competency';
import { practicalLimits, type FindLimit } from './practical-limits';

/** Something a supervisor measures on the witness panels. */
export type PracticalReading = {
	readonly id: string;
	readonly dimension: Dimension;
	readonly label: Text;
	/** Where it is taken, each with a line of its own on the form. */
	readonly places: readonly Text[];
	/** Readings at each place, at least. */
	readonly each: number;
	/** `film`: by the means of its spots and their mean, not by each single reading. */
	readonly judged: 'each' | 'film';
	readonly limit: FindLimit;
};

const same = (name: string): Text => ({ en: name, es: name });
const ONCE: readonly Text[] = [{ en: 'As read', es: 'Lectura' }];
const STEEL_AND_ALUMINIUM: readonly Text[] = [
	{ en: 'W1, steel', es: 'W1, acero' },
	{ en: 'W3, aluminium', es: 'W3, aluminio' }
];

type Taken = Partial<Pick<PracticalReading, 'places' | 'each' | 'judged'>>;

const reading = (
	id: string,
	dimension: Dimension,
	label: Text,
	limit: FindLimit,
	{ places = ONCE, each = 1, judged = 'each' }: Taken = {}
): PracticalReading => ({ id, dimension, label, limit, places, each, judged });

const film = reading(
	'film',
	'length',
	{ en: 'Dry film on W1', es: 'Película seca en W1' },
	practicalLimits.film,
	{
		places: Array.from({ length: SPOTS_PER_AREA }, (_, at) => ({
			en: `Spot ${at + 1}`,
			es: `Sitio ${at + 1}`
		})),
		each: READINGS_PER_SPOT,
		judged: 'film'
	}
);

const rubs = reading(
	'rubs',
	'count',
	{ en: 'Double rubs on W2 without softening', es: 'Frotes dobles en W2 sin ablandar' },
	practicalLimits.rubs
);

/** What is measured in each competency, in working order. */
export const practicalReadings: Readonly<Record<CompetencyId, readonly PracticalReading[]>> = {
	intake: [
		reading(
			'mask-line',
			'length',
			{ en: 'Edge of the masked area off its line', es: 'Borde de la zona enmascarada fuera de su línea' },
			practicalLimits.maskLine,
			{ places: [same('W4')], each: 3 }
		)
	],
	preparation: [
		reading(
			'blast-pressure-steel',
			'pressure',
			{ en: 'Blast pressure on steel', es: 'Presión de granallado sobre acero' },
			practicalLimits.blastSteel,
			{ places: [same('W1, W2')] }
		),
		reading(
			'blast-pressure-aluminium',
			'pressure',
			{ en: 'Blast pressure on aluminium', es: 'Presión de granallado sobre aluminio' },
			practicalLimits.blastAluminium,
			{ places: [same('W3')] }
		),
		reading(
			'profile',
			'length',
			{ en: 'Profile, peak to valley', es: 'Perfil, de pico a valle' },
			practicalLimits.profile,
			{ places: STEEL_AND_ALUMINIUM, each: 3 }
		),
		reading(
			'blast-to-coat',
			'duration',
			{ en: 'From blasting to coating', es: 'De granallar a recubrir' },
			practicalLimits.blastToCoat
		)
	],
	mixing: [
		reading(
			'agitate',
			'duration',
			{ en: 'Agitated before use', es: 'Agitado antes de usar' },
			practicalLimits.agitate
		),
		reading(
			'mix-ratio',
			'ratio',
			{
				en: 'Mix ratio reached, base to hardener, on the basis of the data sheet',
				es: 'Relación de mezcla lograda, base a endurecedor, en la base de la hoja técnica'
			},
			practicalLimits.mixRatio,
			{
				places: [1, 2, 3].map((mix) => ({ en: `Mix ${mix}`, es: `Mezcla ${mix}` }))
			}
		),
		reading(
			'cup-time',
			'duration',
			{ en: 'Flow-cup time', es: 'Tiempo en copa de flujo' },
			practicalLimits.cupTime,
			{ each: 2 }
		)
	],
	spraying: [
		reading(
			'dew-margin',
			'temperature-difference',
			{ en: 'Coldest panel above the dew point by', es: 'Panel más frío por encima del punto de rocío en' },
			practicalLimits.dewMargin
		),
		reading(
			'cap-pressure',
			'pressure',
			{ en: 'Pressure at the air cap', es: 'Presión en la boquilla de aire' },
			practicalLimits.capPressure
		),
		film
	],
	curing: [
		reading(
			'flash',
			'duration',
			{ en: 'Flash-off before the oven', es: 'Evaporación antes del horno' },
			practicalLimits.flash
		),
		reading(
			'hold-temperature',
			'temperature',
			{ en: 'Part temperature during the hold', es: 'Temperatura de la pieza durante el mantenimiento' },
			practicalLimits.holdTemperature,
			{
				places: [
					{ en: 'Lowest on the chart', es: 'La más baja de la gráfica' },
					{ en: 'Highest on the chart', es: 'La más alta de la gráfica' }
				]
			}
		),
		reading(
			'hold-time',
			'duration',
			{
				en: 'Time at part temperature, slowest panel',
				es: 'Tiempo a temperatura de la pieza, panel más lento'
			},
			practicalLimits.holdTime
		),
		rubs
	],
	inspection: [
		film,
		rubs,
		reading(
			'cross-cut',
			'count',
			{
				en: 'Cross-cut class (ISO 2409, 0 is best)',
				es: 'Clase de corte cruzado (ISO 2409, 0 es la mejor)'
			},
			practicalLimits.crossCut,
			{ places: STEEL_AND_ALUMINIUM, each: 3 }
		)
	]
};
