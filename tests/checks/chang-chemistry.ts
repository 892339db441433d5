import { cureEquivalence } from '../../src/lib/engine/physics/cure/cure-equivalence';
import { hours, kelvin } from '../../src/lib/engine/units/construct';
import type { MolarEnergy } from '../../src/lib/engine/units/dimension';
import { published } from './published';

/** Rate constant of the example at 298 K, 1/s. */
const AT_298 = 3.46e-2;

export default published('chang-chemistry', 'example 13.9: rate constant at 350 K', {
	of: ['cure-equivalence'],
	unit: '1/s',
	read: 'example as worked in an open textbook-companion project',
	within: { relative: 0.003, because: 'printed to three digits, with R rounded to 8.314' },
	rows: [
		{
			where: '50.2 kJ/mol',
			expected: 0.702,
			actual: () =>
				(AT_298 * hours(1)) /
				cureEquivalence.at({
					stated: hours(1),
					statedAt: kelvin(298),
					at: kelvin(350),
					activation: 50_200 as MolarEnergy
				})
		}
	]
});
