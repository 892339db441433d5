import { addedSound } from '../../src/lib/engine/physics/exposure/added-sound';
import { decibels } from '../../src/lib/engine/units/construct';
import { published } from './published';

export default published('bcit-mathematics', 'three machines alike', {
	of: ['added-sound'],
	unit: 'dB',
	read: 'example for occupational health with its solution',
	within: { absolute: 0.5, because: 'printed in whole decibels' },
	rows: [
		{
			where: 'three of 72 dB',
			expected: 77,
			actual: () => addedSound.at({ levels: [72, 72, 72].map(decibels) })
		}
	]
});
