import { meanRangeChart } from '../../src/lib/engine/physics/readings/mean-range-chart';
import { published } from './published';

/** Ten subgroups of so many readings with a mean of 0 and a range of 1, so that the limits are the factors themselves. */
const subgroups = (size: number) =>
	Array.from({ length: 10 }, () => [-0.5, ...Array.from({ length: size - 2 }, () => 0), 0.5]);

export default published('pyzdek-quality', 'table of control chart factors: A₂', {
	of: ['mean-range-chart'],
	unit: '',
	read: 'table as stored',
	within: { absolute: 1e-9, because: 'the factor itself, three decimals' },
	rows: (
		[
			[2, 1.88],
			[3, 1.023],
			[4, 0.729],
			[5, 0.577],
			[6, 0.483],
			[7, 0.419],
			[8, 0.373],
			[9, 0.337],
			[10, 0.308]
		] as const
	).map(([size, expected]) => ({
		where: `n = ${size}`,
		expected,
		actual: () => meanRangeChart.at({ subgroups: subgroups(size) }).means.upper
	}))
});
