import { addedSound } from '../../src/lib/engine/physics/exposure/added-sound';
import { decibels } from '../../src/lib/engine/units/construct';
import { published } from './published';

const together = (expected: number, ...levels: number[]) => ({
	where: `${levels.join(' and ')} dB`,
	expected,
	actual: () => addedSound.at({ levels: levels.map(decibels) })
});

export default published('sound-level-answer', 'two sources together', {
	of: ['added-sound'],
	unit: 'dB',
	read: 'page',
	within: { absolute: 0.06, because: 'printed to one decimal' },
	rows: [together(93, 90, 90), together(73.3, 62, 73)]
});
