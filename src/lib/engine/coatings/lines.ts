import type { Text } from '../text';
import type { Dimension } from '../units/dimension';

export type LineShape = 'value' | 'window';
type Line = {
	readonly dimension: Dimension;
	readonly shape: LineShape;
	readonly label: Text;
	readonly always?: true;
};

const line = <const D extends Dimension, const S extends LineShape>(
	dimension: D,
	shape: S,
	en: string,
	es: string
) => ({
	dimension,
	shape,
	label: { en, es }
});

/**
 * Every number a data sheet can state. Lines marked in REQUIRED_LINES must be there; the others are asked of the shop
 * values when the sheet is silent, or make the plan ask.
 */
export const SHEET_LINES = {
	'dry-film': line('length', 'window', 'Dry film thickness', 'Espesor de película seca'),
	'volume-solids': line(
		'fraction',
		'value',
		'Solids by volume, as supplied or mixed',
		'Sólidos en volumen, tal como se entrega o mezclado'
	),
	coats: line('count', 'window', 'Coats', 'Manos'),
	agitate: line('duration', 'window', 'Agitation before use', 'Agitación antes de usar'),
	'mix-ratio': line(
		'ratio',
		'value',
		'Mix ratio, base to hardener',
		'Relación de mezcla, base a endurecedor'
	),
	'mix-ratio-band': line('ratio', 'window', 'Mix ratio permitted', 'Relación de mezcla permitida'),
	'density-base': line('density', 'value', 'Density of the base', 'Densidad de la base'),
	'density-hardener': line('density', 'value', 'Density of the hardener', 'Densidad del endurecedor'),
	stir: line(
		'duration',
		'window',
		'Stirring after the parts are joined',
		'Agitado después de unir las partes'
	),
	induction: line('duration', 'window', 'Induction before use', 'Inducción antes de usar'),
	'pot-life': line('duration', 'value', 'Pot life', 'Vida de la mezcla'),
	'pot-life-at': line(
		'temperature',
		'value',
		'Temperature the pot life is stated at',
		'Temperatura a la que se indica la vida de la mezcla'
	),
	thinner: line(
		'fraction',
		'window',
		'Thinner, volume on paint volume',
		'Diluyente, volumen sobre volumen de pintura'
	),
	strainer: line('length', 'window', 'Strainer opening', 'Abertura del colador'),
	viscosity: line('duration', 'window', 'Flow-cup time', 'Tiempo en copa de flujo'),
	'air-temperature': line(
		'temperature',
		'window',
		'Air temperature while spraying',
		'Temperatura del aire al aplicar'
	),
	humidity: line('fraction', 'window', 'Relative humidity while spraying', 'Humedad relativa al aplicar'),
	'cap-pressure': line('pressure', 'window', 'Pressure at the air cap', 'Presión en la boquilla de aire'),
	distance: line('length', 'window', 'Gun distance', 'Distancia de la pistola'),
	interval: line('duration', 'window', 'Wait between coats', 'Espera entre manos'),
	flash: line('duration', 'window', 'Flash-off before the oven', 'Evaporación antes del horno'),
	'cure-metal-temperature': line(
		'temperature',
		'window',
		'Cure of metals: part temperature',
		'Curado de metales: temperatura de la pieza'
	),
	'cure-metal-hold': line(
		'duration',
		'window',
		'Cure of metals: time at part temperature',
		'Curado de metales: tiempo a temperatura de la pieza'
	),
	'cure-polymer-temperature': line(
		'temperature',
		'window',
		'Cure of polymers: part temperature',
		'Curado de polímeros: temperatura de la pieza'
	),
	'cure-polymer-hold': line(
		'duration',
		'window',
		'Cure of polymers: time at part temperature',
		'Curado de polímeros: tiempo a temperatura de la pieza'
	),
	'cure-laminate-temperature': line(
		'temperature',
		'window',
		'Cure of laminates: part temperature',
		'Curado de laminados: temperatura de la pieza'
	),
	'cure-laminate-hold': line(
		'duration',
		'window',
		'Cure of laminates: time at part temperature',
		'Curado de laminados: tiempo a temperatura de la pieza'
	),
	'solvent-rubs': line('count', 'value', 'Double rubs without softening', 'Frotes dobles sin ablandar'),
	'adhesion-class': line(
		'count',
		'value',
		'Cross-cut class at most (ISO 2409)',
		'Clase de corte cruzado, como máximo (ISO 2409)'
	),
	storage: line('temperature', 'window', 'Storage temperature', 'Temperatura de almacenamiento'),
	'fume-above': line(
		'temperature',
		'value',
		'Gives off harmful fume above',
		'Desprende humo nocivo por encima de'
	),
	'solvent-share': line(
		'fraction',
		'value',
		'Solvent left in the film at the oven door, volume on wet volume',
		'Solvente que queda en la película al entrar al horno, volumen sobre volumen húmedo'
	)
} as const satisfies Record<string, Line>;

export type LineId = keyof typeof SHEET_LINES;

/** Without these no plan can be worked out for any job. */
export const REQUIRED_LINES = [
	'dry-film',
	'volume-solids',
	'coats',
	'agitate',
	'strainer',
	'air-temperature',
	'humidity',
	'interval',
	'adhesion-class',
	'storage'
] as const satisfies readonly LineId[];

/** A mix of two parts needs these as well. */
export const TWO_PART_LINES = [
	'mix-ratio',
	'mix-ratio-band',
	'density-base',
	'density-hardener',
	'stir',
	'pot-life',
	'pot-life-at'
] as const satisfies readonly LineId[];

/** A cure in the oven, by class of substrate: one without the other says nothing. */
export const CURE_LINES = [
	['cure-metal-temperature', 'cure-metal-hold'],
	['cure-polymer-temperature', 'cure-polymer-hold'],
	['cure-laminate-temperature', 'cure-laminate-hold']
] as const satisfies readonly (readonly [LineId, LineId])[];

/** A film that goes into the oven needs these as well; one that only dries in air has none of them. */
export const OVEN_LINES = ['flash'] as const satisfies readonly LineId[];
