import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { combinedUncertainty } from '../../../../src/lib/engine/physics/readings/combined-uncertainty';
import { coverageFactor } from '../../../../src/lib/engine/physics/readings/coverage-factor';
import { expandedUncertainty } from '../../../../src/lib/engine/physics/readings/expanded-uncertainty';
import { guardedLimits } from '../../../../src/lib/engine/physics/readings/guarded-limits';
import { judgeReading } from '../../../../src/lib/engine/physics/readings/judge-reading';
import { readingUncertainty } from '../../../../src/lib/engine/physics/readings/reading-uncertainty';
import { sampleDeviation } from '../../../../src/lib/engine/physics/readings/sample-deviation';
import { sampleMean } from '../../../../src/lib/engine/physics/readings/sample-mean';
import { count, fraction, metres, micrometres, percent } from '../../../../src/lib/engine/units/construct';
import type { Metre } from '../../../../src/lib/engine/units/dimension';

const µm = micrometres;

describe('sample statistics', () => {
	it('are what they are defined as', () => {
		expect(sampleMean.at({ values: [1, 2, 6] })).toBe(3);
		expect(sampleMean.at({ values: [7] })).toBe(7);
		expect(sampleDeviation.at({ values: [1, 2, 6] })).toBe(Math.sqrt((4 + 1 + 9) / 2));
		expect(sampleDeviation.at({ values: [4, 6] })).toBe(Math.SQRT2);
		expect(sampleDeviation.at({ values: [5, 5, 5] })).toBe(0);
	});

	it('refuse too few values and no numbers', () => {
		expect(() => sampleMean.at({ values: [] })).toThrow('sample-mean: values holds no values');
		expect(() => sampleMean.at({ values: [1, NaN] })).toThrow('values = NaN is outside');
		expect(() => sampleDeviation.at({ values: [1] })).toThrow('sample-deviation: values must be two or more');
	});

	it('keep their digits far from zero, and in long sums', () => {
		expect(sampleDeviation.at({ values: [1e8 + 1, 1e8 + 2, 1e8 + 3] })).toBe(1);
		const tenths = Array.from({ length: 10_000 }, () => 0.1);
		expect(sampleMean.at({ values: tenths })).toBe(0.1);
	});
});

describe('coverage factor', () => {
	const k = (share: number, degrees: number) =>
		coverageFactor.at({ confidence: fraction(share), degrees: count(degrees) });

	it('follows the closed forms for one and two degrees of freedom', () => {
		for (const share of [0.5, 0.68, 0.9, 0.95, 0.99]) {
			expect(k(share, 1)).toBeCloseTo(Math.tan((Math.PI / 2) * share), 9);
			expect(k(share, 2)).toBeCloseTo(share * Math.sqrt(2 / (1 - share ** 2)), 9);
		}
	});

	it('comes down to the normal one with many readings, and rises with confidence', () => {
		expect(k(0.95, 1000)).toBeCloseTo(1.96, 2);
		for (let degrees = 1; degrees < 40; degrees++)
			expect(k(0.95, degrees)).toBeGreaterThan(k(0.95, degrees + 1));
		expect(k(0.99, 7)).toBeGreaterThan(k(0.95, 7));
	});

	it('wants whole degrees of freedom', () => {
		expect(() => k(0.95, 2.5)).toThrow('coverage-factor: degrees = 2.5 must be a whole number');
	});
});

describe('uncertainty of readings', () => {
	const readings = [24, 26, 25, 25].map(µm);

	it('is that of their mean, widened for few of them', () => {
		const { mean, deviation, standard, factor, expanded } = readingUncertainty.at({
			readings,
			confidence: percent(95)
		});
		expect(mean).toBeCloseTo(25e-6, 15);
		expect(deviation).toBeCloseTo(Math.sqrt(2 / 3) * 1e-6, 15);
		expect(standard).toBeCloseTo(deviation / 2, 15);
		expect(factor).toBe(coverageFactor.at({ confidence: percent(95), degrees: count(3) }));
		expect(expanded).toBeCloseTo(factor * standard, 15);
	});

	it('needs two', () => {
		expect(() => readingUncertainty.at({ readings: [µm(25)], confidence: percent(95) })).toThrow(
			'two or more'
		);
	});

	it('adds up by squares and widens by its factor', () => {
		expect(combinedUncertainty.at({ parts: [metres(3), metres(4)] })).toBe(5);
		expect(combinedUncertainty.at({ parts: [metres(2)] })).toBe(2);
		expect(expandedUncertainty.at({ standard: metres(3), factor: fraction(2.5) })).toBe(7.5);
	});
});

describe('guarded limits', () => {
	const limits = (uncertainty: number, min = 20, max = 30) =>
		guardedLimits.at({ min: µm(min), max: µm(max), uncertainty: µm(uncertainty) });

	it('move in to accept and out to reject', () => {
		const { inside, outside } = limits(2);
		expect(inside!.min).toBeCloseTo(22e-6, 15);
		expect(inside!.max).toBeCloseTo(28e-6, 15);
		expect(outside.min).toBeCloseTo(18e-6, 15);
		expect(outside.max).toBeCloseTo(32e-6, 15);
		expect(limits(0).inside).toEqual({ min: µm(20), max: µm(30) });
	});

	it('leave nothing to accept where the gauge is coarser than half the window', () => {
		expect(limits(6).inside).toBeNull();
		expect(guardedLimits.at({ min: metres(0), max: metres(1), uncertainty: metres(0.5) }).inside).toEqual({
			min: 0.5,
			max: 0.5
		});
	});

	it('refuse a window the wrong way round', () => {
		expect(() => limits(1, 30, 20)).toThrow(/^guarded-limits: min = .* must not be above max/);
		expect(limits(1, 20, 20).inside).toBeNull();
	});
});

describe('judging a reading', () => {
	const judge = (measured: number, uncertainty = 2) =>
		judgeReading.at({ measured: µm(measured), min: µm(20), max: µm(30), uncertainty: µm(uncertainty) });

	it.each([
		[17.9, 'outside', false],
		[18, 'measure-again', false],
		[19.9, 'measure-again', false],
		[20, 'measure-again', true],
		[21.9, 'measure-again', true],
		[22, 'inside', true],
		[25, 'inside', true],
		[28, 'inside', true],
		[28.1, 'measure-again', true],
		[30, 'measure-again', true],
		[30.1, 'measure-again', false],
		[32, 'measure-again', false],
		[32.1, 'outside', false]
	] as const)('puts %d µm, ± 2 µm against 20 to 30, %s', (measured, zone, withinLimits) => {
		expect(judge(measured)).toEqual({ zone, withinLimits });
	});

	it('takes up rounding in the last bits and no more', () => {
		const window = { min: µm(20), max: µm(30), uncertainty: µm(0) };
		const within = (measured: number) =>
			judgeReading.at({ measured: measured as Metre, ...window }).withinLimits;
		expect([within(window.min - 1e-12), within(window.min - 2e-12)]).toEqual([true, false]);
		expect([within(window.max + 1e-12), within(window.max + 2e-12)]).toEqual([true, false]);
	});

	it('is plain where there is no uncertainty, and proves nothing good with a coarse gauge', () => {
		expect(judge(30, 0)).toEqual({ zone: 'inside', withinLimits: true });
		expect(judge(30.1, 0)).toEqual({ zone: 'outside', withinLimits: false });
		expect(judge(25, 6)).toEqual({ zone: 'measure-again', withinLimits: true });
	});

	it('never proves one film both inside and outside, nor more with a worse gauge', () => {
		const rank = { inside: 2, 'measure-again': 1, outside: 0 };
		fc.assert(
			fc.property(
				fc.double({ min: 0, max: 50, noNaN: true }),
				fc.double({ min: 0, max: 20, noNaN: true }),
				(measured, uncertainty) => {
					const [plain, guarded] = [judge(measured, 0), judge(measured, uncertainty)];
					expect(Math.abs(rank[guarded.zone] - 1)).toBeLessThanOrEqual(Math.abs(rank[plain.zone] - 1));
					expect(guarded.withinLimits).toBe(plain.withinLimits);
				}
			)
		);
	});
});
