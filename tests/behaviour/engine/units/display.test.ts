import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { celsius, hours, micrometres, minutes, psi } from '../../../../src/lib/engine/units/construct';
import type { Dimension } from '../../../../src/lib/engine/units/dimension';
import { format, formatNumber, formatWindow, halfStep } from '../../../../src/lib/engine/units/display';
import { parseQuantity } from '../../../../src/lib/engine/units/parse';
import { METRIC, unitFor, US } from '../../../../src/lib/engine/units/preferences';
import type { Unit } from '../../../../src/lib/engine/units/unit';
import { UNITS } from '../../../../src/lib/engine/units/units';

const everyUnit = Object.values(UNITS).flat();
/** Numbers an instrument shows, in tenths of its last digit so that rounding has something to do. */
const reading = fc
	.record({ unit: fc.constantFrom(...everyUnit), tenths: fc.integer({ min: 0, max: 999_999 }) })
	.map(({ unit, tenths }) => ({ unit, value: unit.toSi(tenths / 10 ** (unit.decimals + 1)) }))
	.filter(({ unit, value }) => value <= 1e9 && (unit.dimension !== 'ratio' || value > 0.001));
const lang = fc.constantFrom('en' as const, 'es' as const);

const shownAndRead = (value: number, { dimension, id }: Unit, language: 'en' | 'es') => {
	const shown = format(value, dimension, id, language);
	const parsed = parseQuantity(shown, dimension, { lang: language });
	if (!parsed.ok) throw new Error(`${shown}: ${parsed.problem.code}`);
	return { shown, parsed: parsed.value };
};

describe('what is printed reads back', () => {
	it('to within half of the last digit shown', () => {
		fc.assert(
			fc.property(reading, lang, ({ unit, value }, language) => {
				const { parsed } = shownAndRead(value, unit, language);
				const slack =
					unit.dimension === 'ratio' && value < 1
						? halfStep(1 / value, 'ratio', ':1') * value ** 2 * 1.01
						: unit.id === 'h' && value >= 3600
							? 30
							: halfStep(value, unit.dimension, unit.id);
				expect(Math.abs(parsed - value)).toBeLessThanOrEqual(slack * (1 + 1e-9) + Math.abs(value) * 1e-12);
			}),
			{ numRuns: 3000 }
		);
	});

	it('and printing that again changes nothing', () => {
		fc.assert(
			fc.property(reading, lang, ({ unit, value }, language) => {
				const once = shownAndRead(value, unit, language);
				expect(format(once.parsed, unit.dimension, unit.id, language)).toBe(once.shown);
			}),
			{ numRuns: 3000 }
		);
	});

	it('for temperatures below zero too', () => {
		fc.assert(
			fc.property(fc.integer({ min: -2000, max: 4000 }), lang, (tenths, language) => {
				const { parsed } = shownAndRead(celsius(tenths / 10), UNITS.temperature[0] as Unit, language);
				expect(parsed).toBeCloseTo(celsius(tenths / 10), 9);
			})
		);
	});
});

const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('format', () => {
	it.each<[number, Dimension, string, 'en' | 'es', string]>([
		[psi(85), 'pressure', 'psi', 'en', '85 psi'],
		[psi(10), 'pressure', 'bar', 'en', '0.69 bar'],
		[psi(1234.56), 'pressure', 'psi', 'es', '1234.6 psi'],
		[micrometres(20.32), 'length', 'mil', 'en', '0.8 mil'],
		[0.0127, 'length', 'in', 'es', '0.5 pulg'],
		[celsius(-0.04), 'temperature', '°C', 'en', '0 °C'],
		[9, 'ratio', ':1', 'en', '9:1'],
		[0.25, 'ratio', ':1', 'en', '1:4'],
		[minutes(75), 'duration', 'h', 'en', '1 h 15 min'],
		[hours(2), 'duration', 'h', 'es', '2 h'],
		[3, 'count', '', 'en', '3'],
		[Math.PI / 2, 'angle', '°', 'en', '90°']
	])('%d as %s in %s (%s) is %s', (value, dimension, unit, language, expected) => {
		expect(plain(format(value, dimension, unit, language))).toBe(expected);
	});

	it('refuses an unknown unit and a value that is no number', () => {
		expect(() => format(1, 'pressure', 'mm', 'en')).toThrow("no unit 'mm'");
		expect(() => format(NaN, 'pressure', 'psi', 'en')).toThrow('cannot show');
	});

	it('gives the number alone where the unit stands elsewhere', () => {
		expect(formatNumber(psi(85), 'pressure', 'psi', 'en')).toBe('85');
	});
});

describe('formatWindow', () => {
	it.each([
		[{ min: psi(80), max: psi(100) }, '80–100 psi', '80–100 psi'],
		[{ max: psi(10) }, 'at most 10 psi', 'como máximo 10 psi'],
		[{ min: psi(80) }, 'at least 80 psi', 'como mínimo 80 psi'],
		[{ max: psi(30), open: true }, 'below 30 psi', 'menos de 30 psi'],
		[{ min: psi(30), max: Infinity, open: true }, 'above 30 psi', 'más de 30 psi'],
		[{ min: psi(30), max: psi(30) }, '30 psi', '30 psi'],
		[{}, 'no limit', 'sin límite']
	])('%o', (window, en, es) => {
		expect(plain(formatWindow(window, 'pressure', 'psi', 'en'))).toBe(en);
		expect(plain(formatWindow(window, 'pressure', 'psi', 'es'))).toBe(es);
	});

	it('keeps a minus sign apart from the dash, and the parts of a ratio together', () => {
		const cold = { min: celsius(-10), max: celsius(5) };
		expect(plain(formatWindow(cold, 'temperature', '°C', 'en'))).toBe('-10 to 5 °C');
		expect(plain(formatWindow(cold, 'temperature', '°C', 'es'))).toBe('-10 a 5 °C');
		expect(plain(formatWindow({ min: 3.9, max: 4.1 }, 'ratio', ':1', 'en'))).toBe('3.9:1 – 4.1:1');
		expect(plain(formatWindow({ min: 3600, max: 4500 }, 'duration', 'h', 'en'))).toBe('1 h – 1 h 15 min');
	});
});

describe('unitFor', () => {
	it('follows size and reader', () => {
		expect(unitFor(25e-6, 'length', METRIC)).toBe('µm');
		expect(unitFor(25e-6, 'length', US)).toBe('mil');
		expect(unitFor(0.2, 'length', METRIC)).toBe('mm');
		expect(unitFor(0.2, 'length', US)).toBe('in');
		expect(unitFor(celsius(20), 'temperature', US)).toBe('°F');
		expect(unitFor(90, 'duration', METRIC)).toBe('s');
		expect(unitFor(600, 'duration', US)).toBe('min');
		expect(unitFor(9, 'ratio', US)).toBe(':1');
		expect(unitFor(2e5, 'pressure', { system: 'metric', own: { pressure: 'psi' } })).toBe('psi');
	});

	it('names units that exist, for every dimension', () => {
		for (const [dimension, units] of Object.entries(UNITS) as [Dimension, readonly Unit[]][])
			for (const preferences of [METRIC, US])
				for (const exponent of [-9, -5, -4, -3, -2, -1, 0, 1, 3, 6])
					expect(units.map((unit) => unit.id)).toContain(unitFor(10 ** exponent, dimension, preferences));
	});
});
