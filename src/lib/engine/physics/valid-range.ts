import { SAME } from '../units/same';

/** A number, or numbers in lists: readings by spot, periods of a shift. */
export type Given = number | readonly Given[];

/** Closed interval in SI. */
export type Range = readonly [low: number, high: number];

function refuse(formula: string, name: string, value: Given, [low, high]: Range) {
	if (typeof value !== 'number') {
		if (value.length === 0) throw new RangeError(`${formula}: ${name} holds no values`);
		for (const one of value) refuse(formula, name, one, [low, high]);
		return;
	}
	const room = SAME * Math.abs(value);
	if (!(value >= low - room && value <= high + room && Number.isFinite(value)))
		throw new RangeError(`${formula}: ${name} = ${value} is outside ${low} to ${high} (SI)`);
}

/**
 * Throws a RangeError naming formula, input, value and permitted range for the first value outside its range, for NaN
 * and for an empty list.
 */
export function refuseOutside<K extends string>(
	formula: string,
	values: { readonly [name in K]: Given },
	ranges: { readonly [name in K]: Range }
): void {
	for (const name in ranges) refuse(formula, name, values[name], ranges[name]);
}
