import { coverageFactor } from '../../src/lib/engine/physics/readings/coverage-factor';
import { count, fraction } from '../../src/lib/engine/units/construct';
import { published } from './published';

export default published('soong-statistics', 'Table A.4: upper tail of Student’s t', {
	of: ['coverage-factor'],
	unit: '',
	read: 'table as stored',
	within: { absolute: 0.0005, because: 'printed to three decimals' },
	rows: (
		[
			[0.1, 1, 3.078],
			[0.005, 4, 4.604],
			[0.05, 6, 1.943],
			[0.025, 10, 2.228],
			[0.01, 18, 2.552]
		] as const
	).map(([tail, degrees, expected]) => ({
		where: `tail ${tail}, ${degrees} degrees of freedom`,
		expected,
		actual: () => coverageFactor.at({ confidence: fraction(1 - 2 * tail), degrees: count(degrees) })
	}))
});
