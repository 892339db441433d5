import { meanRangeChart } from '../../src/lib/engine/physics/readings/mean-range-chart';
import { published } from './published';

const SIZES =
	'24 27 28 33 29 30 29 31 38 42 36 35 24 28 27 32 33 36 31 28 28 28 28 28 30 28 27 26 19 26 23 22 24 27 33 28 ' +
	'26 27 38 26 25 26 27 28 28 24 29 30 31 26 38 24 30 31 33 32 26 25 24 36 24 36 24 36 25 35 25 35 26 30 28 32 ' +
	'27 31 29 33 28 33 30 34 24 24 32 32 18 42 36 30 29 30 31 28 20 36 34 32 14 25 36 35';
const sizes = SIZES.split(' ').map(Number);
const subgroups = Array.from({ length: 25 }, (_, at) => sizes.slice(4 * at, 4 * at + 4));

/** Numbered from 1, as in the book. */
const samples = (outside: readonly number[]) => outside.map((at) => at + 1).join(', ');

/* Of the means the library's note names only the third, though the eighth lies outside as well, so ranges alone are used. */
export default published(
	'foster-quality',
	'figure 11-8: which ranges of 25 samples of four are out of control',
	{
		of: ['mean-range-chart'],
		unit: '',
		read: 'data and findings as worked in an open-source library',
		within: { absolute: 0, because: 'named' },
		rows: [
			{
				where: 'ranges',
				expected: '22, 25',
				actual: () => samples(meanRangeChart.at({ subgroups }).ranges.outside)
			}
		]
	}
);
