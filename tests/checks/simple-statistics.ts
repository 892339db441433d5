import { mean, sampleStandardDeviation } from 'simple-statistics';
import { sampleDeviation } from '../../src/lib/engine/physics/readings/sample-deviation';
import { sampleMean } from '../../src/lib/engine/physics/readings/sample-mean';
import { published } from './published';

/** Fifteen readings of one area, µm. */
const FILM = [22.1, 23.4, 21.9, 25.0, 24.4, 23.8, 20.7, 19.9, 21.2, 26.3, 25.8, 24.9, 22.6, 23.1, 22.2];

export default published('simple-statistics', 'mean and sample deviation', {
	of: ['sample-mean', 'sample-deviation'],
	unit: 'µm',
	read: 'library simple-statistics 7.12.1, run in this test',
	within: { relative: 1e-13, because: 'double precision over fifteen values of one size' },
	rows: [
		{ where: 'mean', expected: mean(FILM), actual: () => sampleMean.at({ values: FILM }) },
		{
			where: 'deviation',
			expected: sampleStandardDeviation(FILM),
			actual: () => sampleDeviation.at({ values: FILM })
		}
	]
});
