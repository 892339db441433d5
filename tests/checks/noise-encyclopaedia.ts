import { addedSound } from '../../src/lib/engine/physics/exposure/added-sound';
import { decibels } from '../../src/lib/engine/units/construct';
import { published } from './published';

const together = (expected: number, within: number, ...levels: number[]) => ({
	where: `${levels.join(', ')} dB(A)`,
	expected,
	within,
	actual: () => addedSound.at({ levels: levels.map(decibels) })
});

export default published('noise-encyclopaedia', 'five machines together', {
	of: ['added-sound'],
	unit: 'dB(A)',
	read: 'page 772 with its example problem',
	within: { absolute: 0.06, because: 'printed to one decimal, or two' },
	rows: [
		together(96.25, 0.006, 85, 88, 80, 70, 95),
		together(80.4, 0.06, 70, 80),
		together(86.3, 0.06, 80.4, 85),
		together(90.3, 0.06, 86.3, 88),
		together(96.3, 0.06, 90.3, 95)
	]
});
