import { cureEquivalence } from '../../src/lib/engine/physics/cure/cure-equivalence';
import { hours, kelvin } from '../../src/lib/engine/units/construct';
import type { MolarEnergy } from '../../src/lib/engine/units/dimension';
import { published } from './published';

export default published('atkins-elements', 'ch. 10: how much faster from 298 K to 310 K', {
	of: ['cure-equivalence'],
	unit: 'times',
	read: 'illustration of chapter 10 as worked in an open textbook-companion project',
	within: { absolute: 0.005, because: 'printed to two decimals' },
	rows: [
		{
			where: '50 kJ/mol',
			expected: 2.18,
			actual: () =>
				1 /
				(cureEquivalence.at({
					stated: hours(1),
					statedAt: kelvin(298),
					at: kelvin(310),
					activation: 50_000 as MolarEnergy
				}) /
					hours(1))
		}
	]
});
