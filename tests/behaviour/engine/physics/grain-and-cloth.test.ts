import { describe, expect, it } from 'vitest';
import { comparators } from '../../../../src/lib/engine/physics/grain/comparator-grade';
import { gritSize } from '../../../../src/lib/engine/physics/grain/grit-size';
import { ANSI_COATED, FEPA_F, FEPA_P } from '../../../../src/lib/engine/physics/grain/grit-tables';
import { meshOpening } from '../../../../src/lib/engine/physics/mixing/mesh-opening';
import { sieveOpening } from '../../../../src/lib/engine/physics/mixing/sieve-opening';
import { count, metres, micrometres } from '../../../../src/lib/engine/units/construct';

describe('sieves and cloth', () => {
	it('know the ends of the standard, and name what they know for a number outside it', () => {
		expect(sieveOpening.at({ number: count(20) })).toBeCloseTo(850e-6, 12);
		expect(sieveOpening.at({ number: count(635) })).toBeCloseTo(20e-6, 12);
		expect(() => sieveOpening.at({ number: count(180) })).toThrow(
			/sieve-opening: No\. 180 is not in ASTM E11; allowed are 20, 30, .*, 500, 635/
		);
	});

	it('of one mesh, thicker wire leaves less open, and wire as thick as the pitch nothing', () => {
		const pitch = 0.0254 / 100;
		const open = (wire: number) => meshOpening.at({ mesh: count(100), wire: metres(wire) });
		expect(open(100e-6)).toBeCloseTo(154e-6, 12);
		expect(open(140e-6)).toBeCloseTo(114e-6, 12);
		expect(open(pitch * 0.999)).toBeGreaterThan(0);
		expect(() => open(pitch)).toThrow(/mesh-opening: .* leaves no opening; allowed is under/);
		expect(() => open(pitch * 1.001)).toThrow('leaves no opening');
	});
});

describe('grit numbers', () => {
	const families = [
		['fepa-p', FEPA_P],
		['fepa-f', FEPA_F],
		['ansi-b74-18', ANSI_COATED]
	] as const;

	it.each(families)(
		'of %s grow as the grain gets finer, and each says where its size is from',
		(id, rows) => {
			const sizes = rows.map(([number]) => gritSize[id].at({ number: count(number) }));
			expect(sizes.map(({ size }) => size).toSorted((a, b) => b - a)).toEqual(sizes.map(({ size }) => size));
			expect(rows.map(([number]) => number).toSorted((a, b) => a - b)).toEqual(
				rows.map(([number]) => number)
			);
			sizes.forEach(({ size, provenance }, at) => {
				expect(size * 1e6).toBeCloseTo(rows[at]![1], 9);
				expect(provenance).toEqual({ ...gritSize[id].source, verification: rows[at]![2] });
			});
		}
	);

	it('mean another grain in another family', () => {
		const hundred = families.map(([id]) => gritSize[id].at({ number: count(100) }).size);
		expect(new Set(hundred).size).toBe(3);
	});

	it('outside the family are refused, naming what is known', () => {
		expect(() => gritSize['fepa-f'].at({ number: count(110) })).toThrow(
			/grit-size-fepa-f: no number 110 in this family; allowed are 24, 30, .*, 180, 220/
		);
		expect(() => gritSize['fepa-p'].at({ number: count(90) })).toThrow('no number 90');
		expect(() => gritSize['ansi-b74-18'].at({ number: count(320) })).toThrow('outside 16 to 220');
	});
});

describe('comparator plates', () => {
	it.each([
		['grit', [24.9, 25, 59.9, 60, 99.9, 100, 149.9, 150]],
		['shot', [24.9, 25, 39.9, 40, 69.9, 70, 99.9, 100]]
	] as const)('of %s grade from each segment up to the next', (kind, profiles) => {
		expect(profiles.map((one) => comparators[kind].grade.at({ profile: micrometres(one) }))).toEqual([
			'finer-than-fine',
			'fine',
			'fine',
			'medium',
			'medium',
			'coarse',
			'coarse',
			'coarser-than-coarse'
		]);
	});
});
