import { mixtureExplosiveLimit } from '../../src/lib/engine/physics/solvent/mixture-explosive-limit';
import type { Fraction } from '../../src/lib/engine/units/dimension';
import { published } from './published';

export default published('iso-10156', 'example 1: limit of methane and ethane', {
	of: ['mixture-explosive-limit'],
	unit: '%',
	read: 'example as held in the test suite of an open chemical-properties library',
	within: { absolute: 0.002, because: 'held to four digits' },
	rows: [
		{
			where: '80 % methane of 4.4 %, 20 % ethane of 2.4 %',
			expected: 3.771,
			actual: () =>
				100 *
				mixtureExplosiveLimit.at({
					shares: [0.8, 0.2] as Fraction[],
					limits: [0.044, 0.024] as Fraction[]
				})
		}
	]
});
