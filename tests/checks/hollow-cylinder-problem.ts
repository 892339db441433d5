import { partArea } from '../../src/lib/engine/physics/film/part-area';
import { count, metres } from '../../src/lib/engine/units/construct';
import { published } from './published';

const cm = (value: number) => metres(value / 100);

export default published('hollow-cylinder-problem', '180 and 120 cm across, 70 cm high, with the cavity', {
	of: ['area-ring'],
	unit: 'cm²',
	read: 'problem and solution',
	within: { absolute: 0.005, because: 'printed to two decimals' },
	rows: [
		{
			where: 'whole surface',
			expected: 94247.78,
			actual: () =>
				1e4 * partArea.ring.at({ outer: cm(180), inner: cm(120), thickness: cm(70), sides: count(2) })
		}
	]
});
