import { purge } from '../../src/lib/engine/physics/solvent/purge';
import { cubicMetres, fraction, ratio } from '../../src/lib/engine/units/construct';
import type { CubicMetrePerSecond } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const FLOW = 1e-3;

export default published('process-forum', 'gas to sweep a tank of 3.4 m³ from 21 % to 1 % oxygen', {
	of: ['purge-time'],
	unit: 'm³',
	read: 'thread with the calculation',
	within: { absolute: 0.05, because: 'printed to one decimal' },
	rows: [
		{
			where: 'perfect mixing',
			expected: 10.4,
			actual: () =>
				FLOW *
				purge.time.at({
					space: cubicMetres(3.4),
					flow: FLOW as CubicMetrePerSecond,
					mixing: ratio(1),
					remaining: fraction(1 / 21)
				})
		}
	]
});
