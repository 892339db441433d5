import { purge } from '../../src/lib/engine/physics/solvent/purge';
import { cubicMetres, hours, ratio } from '../../src/lib/engine/units/construct';
import type { CubicMetrePerSecond } from '../../src/lib/engine/units/dimension';
import { published } from './published';

export default published('tb-ventilation-glossary', 'what one change of air removes', {
	of: ['purge-remaining'],
	unit: '%',
	read: 'the entry on air changes per hour',
	within: { absolute: 0.5, because: 'printed in whole per cent' },
	rows: [
		{
			where: 'perfect mixing',
			expected: 63,
			actual: () =>
				100 -
				100 *
					purge.remaining.at({
						space: cubicMetres(36),
						flow: 0.01 as CubicMetrePerSecond,
						mixing: ratio(1),
						spent: hours(1)
					})
		}
	]
});
