import type { Demand } from '../../../../src/lib/engine/plan/plan';
import { constant } from '../../../../src/lib/engine/plan/trace';
import type { Expectation } from '../../../../src/lib/engine/rules/expectation';
import { arithmetic } from '../../../../src/lib/engine/sources/provenance';
import { si } from '../../../../src/lib/engine/units/construct';
import type { Dimension } from '../../../../src/lib/engine/units/dimension';

/** A demand of an invented rule; a quality demand of the shop unless the case says otherwise. */
export const demand = (rule: string, expectation: Expectation, over: Partial<Demand> = {}): Demand => ({
	rule,
	competency: 'intake',
	severity: 'quality',
	authority: 'shop',
	expectation,
	...over
});

/** A number with a derivation that no case looks at. */
export const traced = <const D extends Dimension>(value: number, dimension: D) =>
	constant('test', dimension, si(value) as never, arithmetic('test'), { en: 'test', es: 'prueba' });

export const range = (min: number, max: number, dimension: Dimension = 'length', amber = 0): Expectation => ({
	kind: 'range',
	min: traced(min, dimension),
	max: traced(max, dimension),
	amber
});
export const atMost = (max: number, dimension: Dimension = 'length', amber = 0): Expectation => ({
	kind: 'at-most',
	max: traced(max, dimension),
	amber
});
export const atLeast = (min: number, dimension: Dimension = 'length', amber = 0): Expectation => ({
	kind: 'at-least',
	min: traced(min, dimension),
	amber
});
export const below = (max: number, dimension: Dimension = 'length', amber = 0): Expectation => ({
	kind: 'below',
	max: traced(max, dimension),
	amber
});
export const computed = (value: number, tolerance: number, amber = 0): Expectation => ({
	kind: 'computed',
	value: traced(value, 'length'),
	tolerance: traced(tolerance, 'fraction'),
	amber
});
