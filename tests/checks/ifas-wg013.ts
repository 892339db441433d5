import { strokeDeposit } from '../../src/lib/engine/physics/spray/stroke-deposit';
import { fraction } from '../../src/lib/engine/units/construct';
import type { CubicMetrePerSecond, MetrePerSecond } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const GALLON = 3.785411784e-3;
const ACRE = 4046.8564224;

export default published('ifas-wg013', 'equation 1: 5940 gal/acre for 1 gal/min at 1 mph and 1 in', {
	of: ['stroke-deposit'],
	unit: 'US gal/acre',
	read: 'equation 1',
	within: { absolute: 0.5, because: 'a whole number' },
	rows: [
		{
			where: 'spray of one nozzle over an inch',
			expected: 5940,
			actual: () =>
				(strokeDeposit.at({
					flow: (GALLON / 60) as CubicMetrePerSecond,
					solids: fraction(1),
					transfer: fraction(1),
					speed: (1609.344 / 3600) as MetrePerSecond
				}) /
					0.0254) *
				(ACRE / GALLON)
		}
	]
});
