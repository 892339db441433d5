import { cite } from '../../sources/provenance';
import {
	bar,
	celsius,
	count,
	degrees,
	hours,
	micrometres,
	millimetres,
	minutes,
	percent
} from '../../units/construct';
import { defaultNumber, defaultWindow } from '../define';

const pressure = (from: number, to: number, en: string, es: string) =>
	defaultWindow('pressure', bar(from), bar(to), `Blast pressure: ${en}`, `Presión de granallado: ${es}`);
const pressureMost = (most: number, en: string, es: string) =>
	defaultNumber(
		'pressure',
		bar(most),
		`Blast pressure at most: ${en}`,
		`Presión de granallado, como máximo: ${es}`
	);
const clock = (longest: number, en: string, es: string) =>
	defaultNumber(
		'duration',
		longest,
		`Blasting to coating at most: ${en}`,
		`De granallar a recubrir, como máximo: ${es}`
	);

/** Shop values the rules of this station lean on. */
export const preparationValues = {
	'blast.pressure.steel': pressure(3, 5, 'carbon and alloy steel', 'acero al carbono y aleado'),
	'blast.pressure.stainless': pressure(3, 5, 'stainless steel', 'acero inoxidable'),
	'blast.pressure.titanium': pressure(2.5, 3.5, 'titanium', 'titanio'),
	'blast.pressure.aluminium': pressure(2, 3, 'aluminium', 'aluminio'),
	'blast.pressure.brass': pressure(2, 3, 'copper, brass, bronze', 'cobre, latón, bronce'),
	'blast.pressure-most.zinc': pressureMost(2, 'zinc, swept only', 'zinc, solo barrido'),
	'blast.pressure-most.polymer': pressureMost(
		2,
		'polymers that may be blasted',
		'polímeros que se pueden granallar'
	),
	'blast.pressure-most.anodised': pressureMost(
		1.5,
		'anodised, agreed in writing',
		'anodizado, aceptado por escrito'
	),
	'blast.stand-off': defaultWindow(
		'length',
		millimetres(100),
		millimetres(200),
		'Blast nozzle to part',
		'De la boquilla de granallado a la pieza'
	),
	'blast.nozzle-coefficient': defaultNumber(
		'fraction',
		0.78,
		'Blast nozzle: share of the air that would pass without abrasive (right to about ±20 %)',
		'Boquilla de granallado: parte del aire que pasaría sin abrasivo (acierta en ±20 %)',
		cite('blast-nozzle-chart', 'air by bore and pressure, worked back', { read: 'chart' }, 'common-practice')
	),
	'blast.duty': defaultNumber(
		'fraction',
		percent(70),
		'Blasting: share of the time the nozzle blows',
		'Granallado: parte del tiempo que sopla la boquilla'
	),
	'blast.leak': defaultNumber(
		'fraction',
		percent(10),
		'Compressed air lost in leaks, of what the compressor delivers',
		'Aire comprimido perdido en fugas, de lo que entrega el compresor'
	),
	'blast.reserve': defaultNumber(
		'fraction',
		percent(20),
		'Compressed air in reserve, for a worn nozzle',
		'Aire comprimido de reserva, por boquilla gastada'
	),
	'profile.share-most': defaultNumber(
		'fraction',
		1 / 2,
		'Profile at most, as a share of the thinnest film',
		'Perfil máximo, como parte de la película más delgada'
	),
	'profile.share-least': defaultNumber(
		'fraction',
		1 / 3,
		'Profile that still keys well, as a share of the thinnest film',
		'Perfil que aún da buen anclaje, como parte de la película más delgada'
	),
	'profile.thinnest-film': defaultNumber(
		'length',
		micrometres(10),
		'Thinnest film the half-film rule is used for',
		'Película más delgada a la que se aplica la regla de la mitad'
	),
	'blast-to-coat.steel': clock(hours(4), 'steel', 'acero'),
	'blast-to-coat.aluminium': clock(hours(4), 'aluminium', 'aluminio'),
	'blast-to-coat.copper': clock(hours(1), 'copper, brass, bronze', 'cobre, latón, bronce'),
	'blast-to-coat.other': clock(hours(4), 'other materials', 'otros materiales'),
	'bake-out.above-cure': defaultWindow(
		'temperature-difference',
		degrees(10),
		degrees(20),
		'Bake-out above the hottest cure of the sheet by',
		'Desgasificado por encima del curado más caliente de la hoja en'
	),
	'bake-out.near-cap': defaultNumber(
		'temperature-difference',
		degrees(5),
		'Bake-out held back by the part limit: stay within',
		'Desgasificado frenado por el límite de la pieza: quedarse a menos de'
	),
	'bake-out.time': defaultWindow(
		'duration',
		minutes(30),
		minutes(60),
		'Bake-out time',
		'Tiempo de desgasificado'
	),
	'bake-out.loops': defaultNumber(
		'count',
		count(3),
		'Bake-outs with residue before the supervisor is told',
		'Desgasificados con residuo antes de avisar al supervisor'
	),
	'drying.time': defaultWindow(
		'duration',
		hours(2),
		hours(4),
		'Drying damp polyamide',
		'Secado de poliamida húmeda'
	),
	'drying.temperature': defaultNumber(
		'temperature',
		celsius(80),
		'Drying temperature of damp polyamide',
		'Temperatura de secado de poliamida húmeda'
	)
} as const;
