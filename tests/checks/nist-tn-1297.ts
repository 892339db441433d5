import { coverageFactor } from '../../src/lib/engine/physics/readings/coverage-factor';
import { count, percent } from '../../src/lib/engine/units/construct';
import { published } from './published';

export default published('nist-tn-1297', 'Table B.1: t for a fraction of the distribution', {
	of: ['coverage-factor'],
	unit: '',
	read: 'table on the institute’s page',
	within: { absolute: 0.005, because: 'printed to two decimals' },
	rows: (
		[
			[95, 1, 12.71],
			[99, 2, 9.92],
			[95.45, 5, 2.65],
			[68.27, 10, 1.05],
			[90, 50, 1.68]
		] as const
	).map(([share, degrees, expected]) => ({
		where: `${share} %, ${degrees} degrees of freedom`,
		expected,
		actual: () => coverageFactor.at({ confidence: percent(share), degrees: count(degrees) })
	}))
});
