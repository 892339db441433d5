import { describe, expect, it } from 'vitest';
import { judgeArea } from '../../../../src/lib/engine/physics/judge-area';
import { sampleDeviation, sampleMean } from '../../../../src/lib/engine/physics/sample-statistics';
import { samplingPlan } from '../../../../src/lib/engine/physics/sampling-plan';
import { mils, squareMetres } from '../../../../src/lib/engine/units/construct';

const spots = (...readings: number[][]) => readings.map((spot) => spot.map(mils));
const even = (value: number) => spots(...Array.from({ length: 5 }, () => [value, value, value]));

describe('judgeArea', () => {
	it('fails an area whose mean is below the window, and names the spot that is too low', () => {
		const readings = spots(
			[0.92, 1.05, 1.0],
			[1.1, 1.12, 1.06],
			[0.78, 0.8, 0.7],
			[1.02, 0.98, 1.0],
			[1.15, 1.18, 1.1]
		);
		const judged = judgeArea(readings, mils(1), mils(1.5));
		expect(judged.verdict).toBe('below');
		expect(judged.spots.map(({ verdict }) => verdict)).toEqual([
			'within',
			'within',
			'below',
			'within',
			'within'
		]);
		expect(judged.accepted).toBe(false);
	});

	it('accepts spots between 0.8 and 1.2 of the limits while the mean is inside', () => {
		const readings = spots([0.81, 0.81, 0.81], [1, 1, 1], [1.2, 1.2, 1.2], [1.43, 1.43, 1.43], [1, 1, 1]);
		expect(judgeArea(readings, mils(0.8), mils(1.2))).toMatchObject({ verdict: 'within', accepted: true });
		const high = spots([0.7, 0.7, 0.7], [1, 1, 1], [1, 1, 1], [1.45, 1.45, 1.45], [1, 1, 1]);
		expect(judgeArea(high, mils(0.8), mils(1.2)).accepted).toBe(false);
	});

	it('does not limit single readings', () => {
		const readings = spots([0.5, 1.3, 1.2], ...Array.from({ length: 4 }, () => [1, 1, 1]));
		expect(judgeArea(readings, mils(0.8), mils(1.2)).accepted).toBe(true);
	});

	it('accepts a spot exactly at its limit', () => {
		const readings = spots([0.64, 0.64, 0.64], [1.44, 1.44, 1.44], [1, 1, 1], [1, 1, 1], [1, 1, 1]);
		expect(judgeArea(readings, mils(0.8), mils(1.2)).accepted).toBe(true);
	});

	it('accepts nothing measured too little', () => {
		expect(judgeArea(even(1).slice(1), mils(0.8), mils(1.2))).toMatchObject({
			complete: false,
			accepted: false
		});
		const two = spots(...Array.from({ length: 5 }, () => [1, 1]));
		expect(judgeArea(two, mils(0.8), mils(1.2))).toMatchObject({ complete: false, accepted: false });
		expect(() => judgeArea([], mils(0.8), mils(1.2))).toThrow('no values');
	});
});

it.each([
	[50, 1],
	[250, 3],
	[300, 3],
	[1000, 3],
	[1001, 4],
	[10_000, 12]
])('%d ft² are measured on %d areas', (squareFeet, areas) => {
	expect(samplingPlan(squareMetres(squareFeet * 0.09290304)).areas).toBe(areas);
});

describe('sample statistics', () => {
	it('refuse too few values and no numbers', () => {
		expect(() => sampleMean([])).toThrow('no values');
		expect(() => sampleMean([1, NaN])).toThrow('not a number');
		expect(() => sampleDeviation([1])).toThrow('two values');
	});

	it('keep their digits far from zero', () => {
		expect(sampleDeviation([1e9 + 1, 1e9 + 2, 1e9 + 3])).toBe(1);
	});
});

it('samplingPlan refuses a surface that is none', () => {
	expect(() => samplingPlan(squareMetres(0))).toThrow('not above 0');
	expect(() => samplingPlan(squareMetres(NaN))).toThrow('not above 0');
});
