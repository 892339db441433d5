import type { Dimension } from './dimension';
import { UNITS } from './units';

export type UnitSystem = 'metric' | 'us';

/** How one person reads numbers: a system, and single units they want otherwise (`pressure: 'psi'`). */
export type UnitPreferences = {
	readonly system: UnitSystem;
	readonly own?: Readonly<Partial<Record<Dimension, string>>>;
};

export const METRIC: UnitPreferences = { system: 'metric' };
export const US: UnitPreferences = { system: 'us' };

/** A unit, used below this size (SI); the last of a ladder has no end. */
type Rung = readonly [unit: string, below: number];

const DURATION: readonly Rung[] = [
	['s', 120],
	['min', 7200],
	['h', 172_800],
	['d', Infinity]
];

/** What a small gun sprays lies below, what a hose or a fan moves above. */
const LITRE_A_MINUTE = 1e-3 / 60;

/** Films are read in µm or mil and parts in mm or inches, so the unit follows the size. */
const LADDERS: Readonly<Record<UnitSystem, Readonly<Partial<Record<Dimension, readonly Rung[]>>>>> = {
	metric: {
		length: [
			['µm', 5e-4],
			['mm', 1],
			['m', Infinity]
		],
		area: [
			['cm²', 0.1],
			['m²', Infinity]
		],
		volume: [
			['mL', 1e-3],
			['L', 1],
			['m³', Infinity]
		],
		mass: [
			['g', 1],
			['kg', Infinity]
		],
		duration: DURATION,
		flow: [
			['mL/min', LITRE_A_MINUTE],
			['m³/h', Infinity]
		]
	},
	us: {
		temperature: [['°F', Infinity]],
		'temperature-difference': [['°F', Infinity]],
		pressure: [['psi', Infinity]],
		length: [
			['mil', 5e-4],
			['in', 0.9144],
			['ft', Infinity]
		],
		area: [
			['in²', 0.0929],
			['ft²', Infinity]
		],
		volume: [
			['US fl oz', 1e-3],
			['US gal', 0.2],
			['ft³', Infinity]
		],
		mass: [
			['g', 0.45],
			['lb', Infinity]
		],
		density: [['lb/US gal', Infinity]],
		duration: DURATION,
		speed: [['ft/min', Infinity]],
		flow: [
			['mL/min', LITRE_A_MINUTE],
			['cfm', Infinity]
		],
		'mass-flow': [['lb/s', Infinity]],
		power: [['hp', Infinity]],
		'spreading-rate': [['ft²/US gal', Infinity]]
	}
};

/** The unit in which this reader is shown a value (SI) of this dimension; a window is chosen by its upper limit. */
export function unitFor(value: number, dimension: Dimension, { system, own }: UnitPreferences): string {
	const fixed = own?.[dimension];
	if (fixed !== undefined) return fixed;
	const rung = LADDERS[system][dimension]?.find(([, below]) => Math.abs(value) < below);
	return rung?.[0] ?? (UNITS[dimension][0]?.id as string);
}
