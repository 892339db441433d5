import { transferEfficiency } from '../../src/lib/engine/physics/spray/transfer-efficiency';
import { fraction, kilograms } from '../../src/lib/engine/units/construct';
import { published } from './published';

export default published('transfer-efficiency-note', 'of each 100 of paint solids sprayed, 83 are lost', {
	of: ['transfer-efficiency'],
	unit: '%',
	read: 'note',
	within: { absolute: 1e-9, because: 'exact' },
	rows: [
		{
			where: 'what stays',
			expected: 17,
			actual: () =>
				100 *
				transferEfficiency.at({
					deposited: kilograms(100 - 83),
					sprayed: kilograms(100),
					solids: fraction(1)
				})
		}
	]
});
