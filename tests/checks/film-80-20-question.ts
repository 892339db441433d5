import { filmEightyTwenty } from '../../src/lib/engine/physics/readings/film-eighty-twenty';
import { micrometres } from '../../src/lib/engine/units/construct';
import { published } from './published';

/** Ten readings of a film specified as 100 µm, some thin, the rest thick enough to hold the mean. */
const accepted = (...thin: number[]) => {
	const readings = [...thin, ...Array.from({ length: 10 - thin.length }, () => 120)].map(micrometres);
	return filmEightyTwenty.upTo.at({ readings, nominal: micrometres(100), most: micrometres(300) }).accepted;
};

export default published('film-80-20-question', '100 µm specified, ten readings', {
	of: ['film-80-20-inclusive'],
	unit: '',
	read: 'page with its example',
	within: { absolute: 0, because: 'accepted or not' },
	rows: [
		{ where: 'two below 100, both at 80 or more', expected: true, actual: () => accepted(80, 99) },
		{ where: 'three below 100', expected: false, actual: () => accepted(85, 90, 99) },
		{ where: 'one below 80', expected: false, actual: () => accepted(79) }
	]
});
