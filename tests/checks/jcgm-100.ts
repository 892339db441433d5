import { combinedUncertainty } from '../../src/lib/engine/physics/readings/combined-uncertainty';
import { coverageFactor } from '../../src/lib/engine/physics/readings/coverage-factor';
import { expandedUncertainty } from '../../src/lib/engine/physics/readings/expanded-uncertainty';
import { readingUncertainty } from '../../src/lib/engine/physics/readings/reading-uncertainty';
import { count, fraction, metres, percent } from '../../src/lib/engine/units/construct';
import { published } from './published';

const together = (...parts: number[]) => combinedUncertainty.at({ parts: parts.map(metres) });

/** °C; the numbers alone matter. */
const TABLE_1 = [
	96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95,
	101.11, 101.2, 101.57, 101.84, 102.36, 102.72
].map(metres);
const thermometer = () => readingUncertainty.at({ readings: TABLE_1, confidence: percent(95) });

export default [
	published('jcgm-100', 'H.1: all components of the end gauge', {
		of: ['combined-uncertainty'],
		unit: 'nm',
		read: 'components and result as worked in the manual of an open-source library',
		within: { absolute: 0.5, because: 'printed in whole nanometres' },
		rows: [
			{ where: 'six components', expected: 32, actual: () => together(25, 16.599, 6.7, 5.8, 3.9, 2.88679) }
		]
	}),
	published('jcgm-100', 'H.1: comparator, and the interval of 99 %', {
		of: ['combined-uncertainty', 'coverage-factor', 'expanded-uncertainty'],
		unit: '',
		read: 'memory',
		within: { absolute: 0.05, because: 'printed to one decimal' },
		rows: [
			{ where: 'u(d), nm', expected: 9.7, actual: () => together(5.8, 3.9, 6.7) },
			{
				where: 't for 99 %, 16 degrees of freedom',
				expected: 2.92,
				within: 0.005,
				actual: () => coverageFactor.at({ confidence: percent(99), degrees: count(16) })
			},
			{
				where: 'U, nm',
				expected: 93,
				within: 0.5,
				actual: () => expandedUncertainty.at({ standard: metres(32), factor: fraction(2.92) })
			}
		]
	}),
	published('jcgm-100', '4.4.3, Table 1: twenty readings of a thermometer', {
		of: ['reading-uncertainty'],
		unit: '°C',
		read: 'memory',
		within: { absolute: 0.005, because: 'printed to two decimals' },
		rows: [
			{ where: 'mean', expected: 100.14, within: 0.0051, actual: () => thermometer().mean },
			{ where: 'deviation', expected: 1.49, actual: () => thermometer().deviation },
			{ where: 'of the mean', expected: 0.33, actual: () => thermometer().standard }
		]
	})
];
