import { meanRangeChart } from '../../src/lib/engine/physics/readings/mean-range-chart';
import { published } from './published';

/** Ten subgroups of so many readings with a range of 1, so that the limits of the ranges are the factors themselves. */
const ranges = (size: number) =>
	meanRangeChart.at({
		subgroups: Array.from({ length: 10 }, () => [0, ...Array.from({ length: size - 2 }, () => 0.5), 1])
	}).ranges;

const facts = {
	of: ['mean-range-chart'],
	table: 'factors',
	unit: '',
	read: 'table as held in an open-source library',
	within: { absolute: 1e-9, because: 'the factor itself, three decimals' }
};

export default [
	published('astm-e2587', 'factors of range charts: D₃', {
		...facts,
		rows: (
			[
				[7, 0.076],
				[8, 0.136],
				[9, 0.184],
				[10, 0.223]
			] as const
		).map(([size, expected]) => ({
			where: `n = ${size}`,
			expected,
			actual: () => ranges(size).lower
		}))
	}),
	published('astm-e2587', 'factors of range charts: D₄', {
		...facts,
		rows: (
			[
				[2, 3.267],
				[3, 2.574],
				[4, 2.282],
				[5, 2.114],
				[6, 2.004],
				[7, 1.924],
				[8, 1.864],
				[9, 1.816],
				[10, 1.777]
			] as const
		).map(([size, expected]) => ({
			where: `n = ${size}`,
			expected,
			actual: () => ranges(size).upper
		}))
	})
];
