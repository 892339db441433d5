import { meanRangeChart } from '../../src/lib/engine/physics/readings/mean-range-chart';
import { published } from './published';

/** The answer works from the grand mean and the mean range alone, so every sample here has just those. */
const [MEAN, RANGE] = [13.57, 2.07];
const subgroups = Array.from({ length: 25 }, () => [MEAN - RANGE / 2, MEAN, MEAN, MEAN, MEAN + RANGE / 2]);
const chart = () => meanRangeChart.at({ subgroups });

export default published('mean-range-answer', '25 samples of five, mean 13.57, mean range 2.07', {
	of: ['mean-range-chart'],
	unit: '',
	read: 'answer with its sums',
	within: { absolute: 0.0051, because: 'printed to two decimals, from a rounded product' },
	rows: [
		{ where: 'upper limit of means', expected: 14.76, actual: () => chart().means.upper },
		{ where: 'lower limit of means', expected: 12.38, actual: () => chart().means.lower },
		{ where: 'upper limit of ranges', expected: 4.38, actual: () => chart().ranges.upper }
	]
});
