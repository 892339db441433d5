import { filmEightyTwenty } from '../../src/lib/engine/physics/readings/film-eighty-twenty';
import { micrometres } from '../../src/lib/engine/units/construct';
import { published } from './published';

const accepted = (readings: readonly number[], most = 300) =>
	filmEightyTwenty.fewer.at({
		readings: readings.map(micrometres),
		nominal: micrometres(100),
		most: micrometres(most)
	}).accepted;
const thick = (many: number) => Array.from({ length: many }, () => 120);

export default published('iso-19840', 'acceptance criteria, one case for each', {
	of: ['film-80-20'],
	unit: '',
	read: 'memory',
	within: { absolute: 0, because: 'accepted or not' },
	rows: [
		{ where: 'fewer than 20 % below nominal', expected: true, actual: () => accepted([80, ...thick(9)]) },
		{ where: 'exactly 20 % below nominal', expected: false, actual: () => accepted([90, 90, ...thick(8)]) },
		{ where: 'one below 80 %', expected: false, actual: () => accepted([79, ...thick(9)]) },
		{ where: 'mean below nominal', expected: false, actual: () => accepted([81, ...Array(9).fill(101)]) },
		{ where: 'one above the stated maximum', expected: false, actual: () => accepted([301, ...thick(9)]) }
	]
});
