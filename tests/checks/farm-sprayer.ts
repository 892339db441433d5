import { filmPerPass } from '../../src/lib/engine/physics/spray/film-per-pass';
import { fraction, metres } from '../../src/lib/engine/units/construct';
import type { CubicMetrePerSecond, MetrePerSecond } from '../../src/lib/engine/units/dimension';
import { published } from './published';

export default published('farm-sprayer', 'application rate: 1.3 L/min, 7.8 km/h, nozzles 0.5 m apart', {
	of: ['film-per-pass'],
	unit: 'L/ha',
	read: 'page with its example',
	within: { relative: 1e-9, because: 'exact' },
	rows: [
		{
			where: 'wet spray on the ground',
			expected: 200,
			actual: () =>
				1e7 *
				filmPerPass.at({
					flow: (1.3e-3 / 60) as CubicMetrePerSecond,
					solids: fraction(1),
					transfer: fraction(1),
					speed: (7.8 / 3.6) as MetrePerSecond,
					index: metres(0.5)
				})
		}
	]
});
