import { describe, expect, it } from 'vitest';
import { individualsChart } from '../../../../src/lib/engine/physics/readings/individuals-chart';
import { meanRangeChart } from '../../../../src/lib/engine/physics/readings/mean-range-chart';

const swinging = Array.from({ length: 10 }, (_, at) => (at % 2 ? 11 : 9));

describe('chart of single values', () => {
	it('reaches 3/1.128 of the mean moving range either side of the mean', () => {
		const { values, ranges } = individualsChart.at({ values: swinging });
		expect(values.centre).toBe(10);
		expect(ranges).toEqual({ lower: 0, centre: 2, upper: 2 * 3.267, outside: [] });
		expect(values.upper - values.centre).toBeCloseTo(6 / 1.128, 12);
		expect(values.centre - values.lower).toBeCloseTo(6 / 1.128, 12);
		expect(values.outside).toEqual([]);
	});

	it('names what lies outside, high and low, by its place', () => {
		const quiet = Array.from({ length: 30 }, (_, at) => (at % 2 ? 10.1 : 9.9));
		const { values, ranges } = individualsChart.at({ values: [...quiet, 15, ...quiet, 5] });
		expect(values.outside).toEqual([30, 61]);
		expect(ranges.outside).toEqual([29, 30, 60]);
	});

	it('takes a value exactly at a limit as inside', () => {
		const flat = Array.from({ length: 10 }, () => 4);
		expect(individualsChart.at({ values: flat })).toEqual({
			values: { lower: 4, centre: 4, upper: 4, outside: [] },
			ranges: { lower: 0, centre: 0, upper: 0, outside: [] }
		});
	});

	it('refuses too few', () => {
		expect(() => individualsChart.at({ values: swinging.slice(1) })).toThrow(
			'individuals-chart: values must be 10 or more, not 9'
		);
	});
});

describe('chart of means and ranges', () => {
	const group = (mean: number, range: number) => [mean - range / 2, mean, mean + range / 2];
	const groups = (many: number) => Array.from({ length: many }, () => group(20, 2));

	it('sets its limits by the tabled factors', () => {
		const { means, ranges } = meanRangeChart.at({ subgroups: groups(10) });
		expect(means.centre).toBe(20);
		expect(means.upper).toBeCloseTo(20 + 1.023 * 2, 12);
		expect(means.lower).toBeCloseTo(20 - 1.023 * 2, 12);
		expect(ranges.upper).toBeCloseTo(2.574 * 2, 12);
		expect(ranges.lower).toBe(0);
		expect(ranges.centre).toBe(2);
		expect([...means.outside, ...ranges.outside]).toEqual([]);
	});

	it('has a lower limit of ranges from seven readings on', () => {
		const seven = (range: number) => [-range / 2, 0, 0, 0, 0, 0, range / 2];
		const subgroups = [seven(0), ...Array.from({ length: 19 }, () => seven(2))];
		const { ranges } = meanRangeChart.at({ subgroups });
		expect(ranges.lower).toBeCloseTo(0.076 * 1.9, 12);
		expect(ranges.outside).toEqual([0]);
	});

	it('names what lies outside by its place', () => {
		const subgroups = [...groups(12), group(25, 2), group(20, 8), group(15, 2)];
		const { means, ranges } = meanRangeChart.at({ subgroups });
		expect(means.outside).toEqual([12, 14]);
		expect(ranges.outside).toEqual([13]);
	});

	it('refuses too few, unlike, too small and too large subgroups', () => {
		expect(() => meanRangeChart.at({ subgroups: groups(9) })).toThrow(
			'mean-range-chart: subgroups must be 10 or more, not 9'
		);
		const same = 'every subgroup must hold the same 2 to 10 readings';
		const of = (size: number) =>
			Array.from({ length: 10 }, () => Array.from({ length: size }, (_, at) => at));
		expect(() => meanRangeChart.at({ subgroups: [...groups(10), [1, 2]] })).toThrow(same);
		expect(() => meanRangeChart.at({ subgroups: of(1) })).toThrow(same);
		expect(() => meanRangeChart.at({ subgroups: of(11) })).toThrow(same);
		expect(() => meanRangeChart.at({ subgroups: [[], ...groups(10)] })).toThrow('holds no values');
		expect(meanRangeChart.at({ subgroups: of(2) }).ranges.centre).toBe(1);
		expect(meanRangeChart.at({ subgroups: of(10) }).ranges.centre).toBe(9);
	});
});
