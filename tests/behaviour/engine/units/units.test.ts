import { describe, expect, it } from 'vitest';
import { parseQuantity } from '../../../../src/lib/engine/units/parse';
import { SI_UNITS, type Dimension } from '../../../../src/lib/engine/units/dimension';
import { spellingKey } from '../../../../src/lib/engine/units/spelling';
import { UNITS, unitOf } from '../../../../src/lib/engine/units/units';

const everyUnit = Object.values(UNITS).flat();

describe('the table of units', () => {
	it('has a unit for every dimension, each in its own row', () => {
		expect(Object.keys(UNITS).sort()).toEqual(Object.keys(SI_UNITS).sort());
		for (const [dimension, units] of Object.entries(UNITS))
			for (const unit of units) expect(unit.dimension).toBe(dimension);
	});

	it('reads every spelling it lists as that unit', () => {
		for (const unit of everyUnit.filter(({ dimension }) => dimension !== 'ratio'))
			for (const spelling of [unit.id, unit.label.en, unit.label.es, ...unit.spellings])
				expect(parseQuantity(`2 ${spelling}`, unit.dimension), `2 ${spelling}`).toMatchObject({
					unit: unit.id
				});
	});

	it('goes to SI and back', () => {
		for (const unit of everyUnit)
			for (const value of [0, 1, 37.5, 1200]) expect(unit.fromSi(unit.toSi(value))).toBeCloseTo(value, 8);
	});

	it('throws for a unit that is not of the dimension', () => {
		expect(() => unitOf('length', 'psi')).toThrow('µm');
		expect(unitOf('length', 'mil').id).toBe('mil');
	});

	it('keeps a point and a difference of temperature apart', () => {
		expect(unitOf('temperature', '°F').toSi(5)).toBeCloseTo(258.15, 9);
		expect(unitOf('temperature-difference' satisfies Dimension, '°F').toSi(5)).toBeCloseTo(2.7778, 4);
	});

	it('forgets case, accents, dots, spaces and raised digits of a spelling', () => {
		expect(spellingKey('US fl. oz.')).toBe(spellingKey('usfloz'));
		expect(spellingKey('ft²')).toBe(spellingKey('FT^2'));
		expect(spellingKey('ºC')).toBe(spellingKey('°c'));
		expect(spellingKey('Centígrados')).toBe('centigrados');
	});
});
