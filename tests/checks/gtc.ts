import { readingUncertainty } from '../../src/lib/engine/physics/readings/reading-uncertainty';
import { metres, percent } from '../../src/lib/engine/units/construct';
import { published } from './published';

const readings = Array.from({ length: 15 }, (_, at) => metres(at));

export default published('gtc', 'type A standard uncertainty of a mean', {
	of: ['reading-uncertainty'],
	unit: '',
	read: 'example of the function in the library’s manual',
	within: { relative: 1e-14, because: 'double precision' },
	rows: [
		{
			where: 'numbers 0 to 14',
			expected: 1.1547005383792515,
			actual: () => readingUncertainty.at({ readings, confidence: percent(95) }).standard
		}
	]
});
