import { activationEnergy } from '../../src/lib/engine/physics/cure/activation-energy';
import { kelvin, ratio } from '../../src/lib/engine/units/construct';
import { published } from './published';

export default published('chang-chemistry', 'example 13.9: the energy behind that rise, read backwards', {
	of: ['activation-energy'],
	table: 'example 13.9: rate constant at 350 K',
	unit: 'kJ/mol',
	read: 'example as worked in an open textbook-companion project',
	within: { absolute: 0.1, because: 'rate constants are printed to three digits' },
	rows: [
		{
			where: '0.0346 1/s at 298 K, 0.702 1/s at 350 K',
			expected: 50.2,
			actual: () =>
				activationEnergy.at({
					times: ratio(0.702 / 0.0346),
					cooler: kelvin(298),
					warmer: kelvin(350)
				}) / 1e3
		}
	]
});
