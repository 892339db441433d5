import { fitGrowth } from '../../src/lib/engine/physics/film/fit-growth';
import { mils } from '../../src/lib/engine/units/construct';
import { unitOf } from '../../src/lib/engine/units/units';
import { published } from './published';

export default published('plating-thread-fit', 'one ten-thousandth of an inch on both sides', {
	of: ['fit-growth-diameter'],
	unit: 'in',
	read: 'opening of the transcript',
	within: { absolute: 1e-12, because: 'exact' },
	rows: [
		{
			where: 'growth across the part',
			expected: 0.0002,
			actual: () => unitOf('length', 'in').fromSi(fitGrowth.diameter.at({ dry: mils(0.1) }))
		}
	]
});
