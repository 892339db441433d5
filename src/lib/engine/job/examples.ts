import type { IsoDate } from '../coatings/sheet';
import type { Text } from '../text';
import {
	celsius,
	cubicMetresPerHour,
	days,
	hours,
	kilograms,
	metresPerSecond,
	micrometres,
	millimetres,
	percent
} from '../units/construct';
import type { Job } from './job';
import type { Part } from './part';
import { inYear, PLATE, soundDay } from './sound-day';

type Uncoated = Omit<Job, 'coating' | 'ticket'>;

/** A job built by hand to show what rules expect. It names no coating: it is tried with every sheet of the shop. */
export type ExampleJob = { readonly id: string; readonly name: Text; on(day: IsoDate): Uncoated };

type Over = Partial<Omit<Uncoated, 'shelf' | 'bench' | 'weather' | 'wearer' | 'parts'>> & {
	[K in 'shelf' | 'bench' | 'weather' | 'wearer']?: Partial<Job[K]>;
};

const example = (
	id: string,
	en: string,
	es: string,
	parts: readonly Partial<Part>[],
	over: Over | ((on: IsoDate) => Over) = {}
): ExampleJob => ({
	id,
	name: { en, es },
	on(day) {
		const base = soundDay(day);
		const { shelf, bench, weather, wearer, ...rest } = typeof over === 'function' ? over(day) : over;
		return {
			...base,
			...rest,
			parts: parts.map((part) => ({ ...PLATE, ...part })),
			shelf: { ...base.shelf, ...shelf },
			bench: { ...base.bench, ...bench },
			weather: { ...base.weather, ...weather },
			wearer: { ...base.wearer, ...wearer }
		};
	}
});

const named = (en: string, es: string) => ({ name: { en, es } });
const size = (length: number, width: number, height: number, thickness: number, mass: number) => ({
	length: millimetres(length),
	width: millimetres(width),
	height: millimetres(height),
	thickness: millimetres(thickness),
	mass: kilograms(mass)
});
const notMagnetic = { magnetSticks: false } as const;

const CASTING: Partial<Part> = {
	...named('pump cover', 'tapa de bomba'),
	...size(140, 100, 40, 6, 0.9),
	...notMagnetic,
	count: 12,
	material: 'aluminium-casting',
	shape: 'box',
	porous: true,
	blindHole: true,
	features: ['sealing-face', 'thread'],
	masked: ['sealing-face']
};

/** Jobs that can be done as they stand, over the materials. */
const sound: readonly ExampleJob[] = [
	example('steel-plates', '20 steel hinge plates', '20 placas de bisagra de acero', [
		{ features: ['thread'], masked: ['thread'] }
	]),
	example('aluminium-brackets', '15 aluminium 6061 brackets', '15 soportes de aluminio 6061', [
		{
			...named('clamp bracket', 'soporte de abrazadera'),
			...size(90, 40, 60, 4, 0.11),
			...notMagnetic,
			count: 15,
			material: 'aluminium-6061',
			shape: 'bracket',
			features: ['thread', 'ground-contact'],
			masked: ['thread']
		}
	]),
	example('stainless-tubes', '8 stainless guide tubes', '8 tubos guía de acero inoxidable', [
		{
			...named('guide tube', 'tubo guía'),
			...size(300, 40, 40, 2, 0.57),
			...notMagnetic,
			count: 8,
			material: 'stainless-steel',
			shape: 'tube',
			features: ['bearing-seat'],
			masked: ['bearing-seat']
		}
	]),
	example('castings', '12 aluminium pump covers, cast', '12 tapas de bomba de aluminio fundido', [CASTING]),
	example('spring-clips', '60 spring clips, tempered', '60 clips de resorte revenidos', [
		{
			...named('spring clip', 'clip de resorte'),
			...size(60, 15, 25, 1, 0.012),
			count: 60,
			material: 'spring-steel',
			shape: 'bracket',
			tempered: celsius(220)
		}
	]),
	example('brass-levers', '25 brass valve levers', '25 palancas de válvula de latón', [
		{
			...named('valve lever', 'palanca de válvula'),
			...size(110, 14, 14, 14, 0.14),
			...notMagnetic,
			count: 25,
			material: 'brass',
			shape: 'bar'
		}
	]),
	example('titanium-rings', '10 titanium spacer rings', '10 anillos espaciadores de titanio', [
		{
			...named('spacer ring', 'anillo espaciador'),
			...size(15, 60, 15, 6, 0.07),
			...notMagnetic,
			count: 10,
			material: 'titanium',
			shape: 'ring'
		}
	]),
	example('zinc-housings', '18 zinc die-cast housings', '18 carcasas de zinc fundido a presión', [
		{
			...named('instrument housing', 'carcasa de instrumento'),
			...size(90, 60, 30, 3, 0.35),
			...notMagnetic,
			count: 18,
			material: 'zinc-die-cast',
			shape: 'box'
		}
	]),
	example('anodised-panels', '10 anodised panels', '10 paneles anodizados', [
		{
			...named('front panel', 'panel frontal'),
			...size(200, 100, 3, 3, 0.16),
			...notMagnetic,
			count: 10,
			material: 'anodised-aluminium',
			surface: 'bare'
		}
	]),
	example('abs-shells', '30 ABS sensor shells', '30 cubiertas de sensor de ABS', [
		{
			...named('sensor shell', 'cubierta de sensor'),
			...size(70, 50, 25, 2.5, 0.03),
			...notMagnetic,
			count: 30,
			material: 'abs',
			shape: 'box',
			surface: 'bare'
		}
	]),
	example(
		'damp-polyamide',
		'30 polyamide shells from a humid shelf',
		'30 cubiertas de poliamida de un estante húmedo',
		[
			{
				...named('sensor shell', 'cubierta de sensor'),
				...size(70, 50, 25, 2.5, 0.03),
				...notMagnetic,
				count: 30,
				material: 'polyamide',
				shape: 'box',
				surface: 'bare',
				humidStore: true
			}
		]
	),
	example('laminate-panels', '4 carbon-fibre fairing panels', '4 paneles de carenado de fibra de carbono', [
		{
			...named('fairing panel', 'panel de carenado'),
			...size(400, 250, 2, 2, 0.3),
			...notMagnetic,
			count: 4,
			material: 'carbon-laminate',
			surface: 'bare'
		}
	])
];

/** Jobs with something on shelf, bench or day that has to be noticed. */
const noticed: readonly ExampleJob[] = [
	example(
		'mixed-rack',
		'thin covers and thick blocks on one rack',
		'tapas delgadas y bloques gruesos en un bastidor',
		[
			{ ...named('thin cover', 'tapa delgada'), ...size(150, 100, 1, 1, 0.12) },
			{ ...named('thick block', 'bloque grueso'), ...size(150, 100, 40, 40, 4.7), count: 4 }
		]
	),
	example(
		'overdue-plates',
		'steel plates blasted two days ago',
		'placas de acero granalladas hace dos días',
		[{}],
		{
			blastedAgo: days(2)
		}
	),
	example(
		'bleeding-castings',
		'castings that still bleed after a bake-out',
		'fundiciones que aún sudan tras desgasificar',
		[CASTING],
		{
			residueLoops: 1
		}
	),
	example('expired-lot', 'steel plates, lot past its date', 'placas de acero, lote vencido', [{}], (on) => ({
		shelf: { expires: inYear(on, -1) }
	})),
	example(
		'crystal-hardener',
		'steel plates, crystals in the hardener',
		'placas de acero, endurecedor con cristales',
		[{}],
		{
			shelf: { hardenerState: 'crystals' }
		}
	),
	example(
		'cold-can',
		'steel plates, can from a cold store',
		'placas de acero, lata de un almacén frío',
		[{}],
		{
			shelf: { stored: celsius(4), warming: hours(2) }
		}
	),
	example(
		'left-over-mix',
		'steel plates, left-over mix on the bench',
		'placas de acero, sobrante de mezcla en el banco',
		[{}],
		{
			shelf: { leftOverAge: hours(20) }
		}
	),
	example(
		'cold-part',
		'steel plates colder than the damp air',
		'placas de acero más frías que el aire húmedo',
		[{}],
		{
			weather: { air: celsius(22), humidity: percent(62), part: celsius(15.5), paint: celsius(21) }
		}
	),
	example('damp-day', 'steel plates on a very humid day', 'placas de acero en un día muy húmedo', [{}], {
		weather: { air: celsius(24), humidity: percent(88), part: celsius(24), paint: celsius(22) }
	}),
	example('hot-day', 'steel plates on a hot day', 'placas de acero en un día caluroso', [{}], {
		weather: { air: celsius(34), humidity: percent(45), part: celsius(33), paint: celsius(30) }
	}),
	example(
		'oily-air',
		'steel plates, oil ring on the blotter',
		'placas de acero, anillo de aceite en el papel',
		[{}],
		{
			bench: { blotter: 'oil-ring' }
		}
	),
	example(
		'small-compressor',
		'steel plates, small compressor, wide nozzles only',
		'placas de acero, compresor chico, solo boquillas anchas',
		[{}],
		{
			bench: { compressor: cubicMetresPerHour(32), nozzles: ['bore-7-9', 'bore-9-5'] }
		}
	),
	example('torn-cabinet', 'steel plates, torn cabinet seal', 'placas de acero, sello de cabina roto', [{}], {
		bench: { cabinet: 'torn-seal' }
	}),
	example('weak-booth', 'steel plates, weak booth air', 'placas de acero, cabina con poco aire', [{}], {
		bench: { boothSpeed: metresPerSecond(0.3) }
	}),
	example(
		'bearded-sprayer',
		'steel plates, bearded person, tight mask only',
		'placas de acero, persona con barba, solo máscara ajustada',
		[{}],
		{
			bench: { breathing: ['half-mask'] },
			wearer: { beard: true }
		}
	),
	example(
		'witness-readings',
		'steel plates, film readings on the ticket',
		'placas de acero, lecturas de película en la orden',
		[{}],
		{
			readings: [
				[21, 22, 20],
				[19, 20, 21],
				[24, 23, 24],
				[18, 19, 18],
				[11, 10, 11]
			].map((spot) => spot.map(micrometres))
		}
	)
];

/** Jobs that may not start as they stand. */
const questioned: readonly ExampleJob[] = [
	example('unknown-blocks', '6 blocks of unnamed metal', '6 bloques de metal sin identificar', [
		{ ...named('block', 'bloque'), ...notMagnetic, count: 6, material: 'unknown' }
	]),
	example(
		'magnetic-stainless',
		'"stainless" plates a magnet sticks to',
		'placas «inoxidables» a las que se pega un imán',
		[{ material: 'stainless-steel', magnetSticks: true }]
	),
	example('magnesium-boxes', '5 magnesium boxes', '5 cajas de magnesio', [
		{
			...named('gear box cover', 'tapa de caja de engranes'),
			...size(120, 90, 40, 4, 0.3),
			...notMagnetic,
			count: 5,
			material: 'magnesium',
			shape: 'box'
		}
	]),
	example('sealed-floats', '4 closed steel floats', '4 flotadores de acero cerrados', [
		{ ...named('float', 'flotador'), ...size(150, 80, 80, 2, 0.7), count: 4, shape: 'tube', cavity: 'sealed' }
	]),
	example('old-coated-plates', 'plates with an old coating', 'placas con un recubrimiento viejo', [
		{ surface: 'old-coating' }
	]),
	example('yellow-plates', 'plates with shiny yellow plating', 'placas con baño amarillo brillante', [
		{ surface: 'yellow-plating' }
	]),
	example('fitted-bearings', 'brackets with the bearing still in', 'soportes con el rodamiento puesto', [
		{ ...named('bearing bracket', 'soporte de rodamiento'), fitted: ['bearing'], features: ['bearing-seat'] }
	]),
	example(
		'knob-levers',
		'steel levers with a bonded ABS knob',
		'palancas de acero con perilla de ABS pegada',
		[
			{
				...named('lever', 'palanca'),
				...size(160, 12, 12, 12, 0.18),
				shape: 'bar',
				fitted: ['bonded-abs-knob']
			}
		]
	),
	example(
		'unstated-film',
		'plates, film not said per side or in total',
		'placas, película sin decir por cara o en total',
		[{}],
		{
			film: { min: micrometres(20), max: micrometres(25), basis: 'unstated' }
		}
	),
	example(
		'thick-film',
		'plates drawn with a film of 80 to 100 µm',
		'placas con película de 80 a 100 µm en el plano',
		[{}],
		{
			film: { min: micrometres(80), max: micrometres(100), basis: 'per-side' }
		}
	),
	example('polypropylene-tubs', '10 polypropylene tubs', '10 bandejas de polipropileno', [
		{
			...named('tub', 'bandeja'),
			...size(200, 120, 60, 2, 0.12),
			...notMagnetic,
			material: 'polypropylene',
			shape: 'box',
			surface: 'bare',
			count: 10
		}
	])
];

/** All of them: the sound ones first, because a lesson shows the first that a rule speaks of. */
export const EXAMPLE_JOBS: readonly ExampleJob[] = [...sound, ...noticed, ...questioned];
