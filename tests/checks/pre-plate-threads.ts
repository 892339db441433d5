import { fitGrowth } from '../../src/lib/engine/physics/film/fit-growth';
import { micrometres, millimetres } from '../../src/lib/engine/units/construct';
import { unitOf } from '../../src/lib/engine/units/units';
import { published } from './published';

const degrees = (angle: number) => unitOf('angle', '°').toSi(angle) as never;
const films = (angle: number) =>
	fitGrowth.flanks.at({ dry: micrometres(10), angle: degrees(angle) }) / micrometres(10);

export default published('pre-plate-threads', 'change of a pitch diameter in platings', {
	of: ['fit-growth-flanks', 'fit-growth-thread'],
	unit: 'films',
	read: 'opening of the article, with its formula 2 · csc of half the angle',
	within: { absolute: 1e-9, because: 'exact' },
	rows: [
		{ where: '60° thread', expected: 4, actual: () => films(60) },
		{ where: '29° trapezoidal thread', expected: 8, within: 0.05, actual: () => films(29) },
		{
			where: '60° thread, by the rule for it',
			expected: 4,
			actual: () => fitGrowth.thread.at({ dry: millimetres(0.01) }) / millimetres(0.01)
		}
	]
});
