import { feetPerMinute } from '../../src/lib/engine/units/construct';
import { published } from './published';

export default published('mechanical-code-502', 'air velocity through booth openings, in both units', {
	of: ['units'],
	unit: 'm/s',
	read: 'sections as printed on a code page',
	within: { absolute: 0.005, because: 'printed to two decimals' },
	rows: [
		{ where: 'sprayed by hand, 100 ft/min', expected: 0.51, actual: () => feetPerMinute(100) },
		{ where: 'fixed electrostatic, 50 ft/min', expected: 0.25, actual: () => feetPerMinute(50) }
	]
});
