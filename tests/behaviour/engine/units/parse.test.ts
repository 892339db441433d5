import { describe, expect, it } from 'vitest';
import {
	celsius,
	fahrenheit,
	hours,
	litres,
	micrometres,
	mils,
	minutes,
	percent,
	psi
} from '../../../../src/lib/engine/units/construct';
import type { Dimension } from '../../../../src/lib/engine/units/dimension';
import { parseQuantity, type ParseOptions } from '../../../../src/lib/engine/units/parse';

const value = (typed: string, dimension: Dimension, options?: ParseOptions) => {
	const parsed = parseQuantity(typed, dimension, options);
	return parsed.ok ? parsed.value : parsed.problem.code;
};

describe('reads what people type', () => {
	it.each<[string, Dimension, number]>([
		['85 psi', 'pressure', psi(85)],
		['85psi', 'pressure', psi(85)],
		['85 PSIG', 'pressure', psi(85)],
		['+5 psi', 'pressure', psi(5)],
		['5,9 bar', 'pressure', 590_000],
		['300°F', 'temperature', fahrenheit(300)],
		['300 ºF', 'temperature', fahrenheit(300)],
		['300 grados F', 'temperature', fahrenheit(300)],
		['149 C', 'temperature', celsius(149)],
		['149 ℃', 'temperature', celsius(149)],
		['149 deg C', 'temperature', celsius(149)],
		['-5 °C', 'temperature', celsius(-5)],
		['−5 °C', 'temperature', celsius(-5)],
		['5 °F', 'temperature-difference', 25 / 9],
		['-3 °C', 'temperature-difference', -3],
		['0.8 mil', 'length', mils(0.8)],
		['.8 mils', 'length', mils(0.8)],
		['25 µm', 'length', micrometres(25)],
		['25 μm', 'length', micrometres(25)],
		['25 um', 'length', micrometres(25)],
		['25 micras', 'length', micrometres(25)],
		['1/2 in', 'length', 0.0127],
		['1 1/2 in.', 'length', 0.0381],
		['1½"', 'length', 0.0381],
		['1½”', 'length', 0.0381],
		['5 ft 6 in', 'length', 1.6764],
		['5\' 6"', 'length', 1.6764],
		['3 pulgadas', 'length', 0.0762],
		['2 US fl oz', 'volume', litres(3.785411784 / 64)],
		['2 oz líq. EE. UU.', 'volume', litres(3.785411784 / 64)],
		['2 imp pt', 'volume', litres(4.54609 / 4)],
		['500 cc', 'volume', litres(0.5)],
		['8 oz (weight)', 'mass', 0.45359237 / 2],
		['8 oz (peso)', 'mass', 0.45359237 / 2],
		['1.2 g/cm³', 'density', 1200],
		['12 sq ft', 'area', 12 * 0.09290304],
		['1 h 15 min', 'duration', minutes(75)],
		['1 hora y 15 minutos', 'duration', minutes(75)],
		['1h15', 'duration', minutes(75)],
		['1:15 h', 'duration', minutes(75)],
		['1:30 min', 'duration', 90],
		['1 d 2 h', 'duration', hours(26)],
		['15 m', 'duration', minutes(15)],
		['100 fpm', 'speed', 0.508],
		['65 %HR', 'fraction', percent(65)],
		['65%', 'fraction', percent(65)],
		['0.65 fraction', 'fraction', percent(65)],
		['9:1', 'ratio', 9],
		['9 : 1', 'ratio', 9],
		['9 to 1', 'ratio', 9],
		['9 a 1', 'ratio', 9],
		['9/1', 'ratio', 9],
		['4,5:1', 'ratio', 4.5],
		['100:25', 'ratio', 4],
		['1:9', 'ratio', 1 / 9],
		['2', 'count', 2],
		['2 manos', 'count', 2],
		['90°', 'angle', Math.PI / 2],
		['90 dBA', 'sound-level', 90]
	])('%s as %s', (typed, dimension, expected) => {
		expect(value(typed, dimension)).toBeCloseTo(expected, expected > 1000 ? 6 : 12);
	});

	it('tells the unit it was typed in', () => {
		expect(parseQuantity('25 microns', 'length')).toMatchObject({ ok: true, unit: 'µm' });
		expect(parseQuantity('1 h 15 min', 'duration')).toMatchObject({ ok: true, unit: 'min' });
	});

	it('takes the unit printed beside the field only where the field prints one', () => {
		expect(value('85', 'pressure')).toBe('missing-unit');
		expect(value('85', 'pressure', { fallbackUnit: 'psi' })).toBe(psi(85));
		expect(value('5.9 bar', 'pressure', { fallbackUnit: 'psi' })).toBe(590_000);
		expect(value('9', 'ratio')).toBe('missing-unit');
		expect(value('9', 'ratio', { fallbackUnit: ':1' })).toBe(9);
		expect(() => parseQuantity('85', 'pressure', { fallbackUnit: 'mm' })).toThrow('mm');
	});
});

describe('separators', () => {
	it.each<[string, number | string]>([
		['1,2 ft²', 1.2],
		['1,25 ft²', 1.25],
		['1,200 ft²', 'ambiguous-number'],
		['12,500 ft²', 'ambiguous-number'],
		['1200,125 ft²', 1200.125],
		['0,125 ft²', 0.125],
		['1,200.5 ft²', 1200.5],
		['1.200,5 ft²', 1200.5],
		['1,234,567 ft²', 1_234_567],
		['1 200 ft²', 1200],
		['1\u202f200,5 ft²', 1200.5],
		['1,20,300 ft²', 'not-a-number'],
		['1.2.3 ft²', 'not-a-number'],
		['1,200,5 ft²', 'not-a-number']
	])('%s', (typed, expected) => {
		const read = value(typed, 'area');
		if (typeof expected === 'number') expect(read).toBeCloseTo(expected * 0.09290304, 6);
		else expect(read).toBe(expected);
	});

	it('a point before three digits is a decimal in English and could be thousands in Spanish', () => {
		expect(value('1.200 g', 'mass')).toBeCloseTo(0.0012);
		expect(value('1.200 g', 'mass', { lang: 'es' })).toBe('ambiguous-number');
		expect(value('0.125 g', 'mass', { lang: 'es' })).toBeCloseTo(0.000125);
	});
});

describe('refuses, and says why', () => {
	it.each<[string, Dimension, string]>([
		['', 'pressure', 'empty'],
		['   ', 'pressure', 'empty'],
		['psi', 'pressure', 'not-a-number'],
		['∞ psi', 'pressure', 'not-a-number'],
		['NaN psi', 'pressure', 'not-a-number'],
		['~85 psi', 'pressure', 'not-a-number'],
		['<script>', 'pressure', 'not-a-number'],
		['1/0 in', 'length', 'not-a-number'],
		['9:0', 'ratio', 'not-a-number'],
		['3:1:0.5', 'ratio', 'not-a-number'],
		['1:75 h', 'duration', 'more-than-one-number'],
		['80-100 psi', 'pressure', 'more-than-one-number'],
		['1e3 psi', 'pressure', 'more-than-one-number'],
		['300°', 'temperature', 'missing-unit'],
		['1:30', 'duration', 'missing-unit'],
		['0.35', 'fraction', 'missing-unit'],
		['85 pis', 'pressure', 'unknown-unit'],
		['85 mm', 'pressure', 'wrong-dimension'],
		['85 lb', 'pressure', 'wrong-dimension'],
		['2 oz', 'pressure', 'wrong-dimension'],
		['2 oz', 'volume', 'ambiguous-ounce'],
		['2 ounces', 'mass', 'ambiguous-ounce'],
		['2 onzas', 'volume', 'ambiguous-ounce'],
		['2 fl. oz.', 'volume', 'ambiguous-ounce'],
		['1 gal', 'volume', 'ambiguous-unit'],
		['1 galón', 'volume', 'ambiguous-unit'],
		['1 pint', 'volume', 'ambiguous-unit'],
		['-300 °C', 'temperature', 'below-absolute-zero'],
		['-5 psi', 'pressure', 'negative'],
		['-9:1', 'ratio', 'negative'],
		['1 h -5 min', 'duration', 'negative'],
		['2.5', 'count', 'not-whole'],
		['9'.repeat(40) + ' psi', 'pressure', 'too-large'],
		['9'.repeat(5000), 'pressure', 'not-a-number']
	])('%s as %s: %s', (typed, dimension, code) => {
		expect(value(typed, dimension)).toBe(code);
	});

	it('names what the ounce could be', () => {
		const parsed = parseQuantity('2 oz', 'volume');
		expect(parsed.ok ? parsed : parsed.problem).toMatchObject({
			unit: 'oz',
			choices: ['US fl oz', 'imp fl oz', 'oz (weight)']
		});
	});

	it('names what was measured instead', () => {
		const parsed = parseQuantity('85 mm', 'pressure');
		expect(parsed.ok ? parsed : parsed.problem).toMatchObject({ unit: 'mm', found: 'length' });
	});
});
