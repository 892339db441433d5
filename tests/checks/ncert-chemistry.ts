import { activationEnergy } from '../../src/lib/engine/physics/cure/activation-energy';
import { kelvin, ratio } from '../../src/lib/engine/units/construct';
import { published } from './published';

export default published('ncert-chemistry', 'a rate that doubles from 298 to 308 K', {
	of: ['activation-energy'],
	unit: 'kJ/mol',
	read: 'worked problem as reproduced on a study page',
	within: { absolute: 0.05, because: 'printed to one decimal' },
	rows: [
		{
			where: 'activation energy',
			expected: 52.9,
			actual: () => activationEnergy.at({ times: ratio(2), cooler: kelvin(298), warmer: kelvin(308) }) / 1e3
		}
	]
});
