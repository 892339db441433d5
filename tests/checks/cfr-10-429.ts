import { coverageFactor } from '../../src/lib/engine/physics/readings/coverage-factor';
import { count, percent } from '../../src/lib/engine/units/construct';
import { published } from './published';

export default published('cfr-10-429', 'Appendix A: one-sided t for certification testing', {
	of: ['coverage-factor'],
	unit: '',
	read: 'table of the regulation',
	within: { absolute: 0.0005, because: 'printed to three decimals' },
	rows: (
		[
			[95, 3, 2.353],
			[97.5, 9, 2.262],
			[99, 14, 2.624],
			[90, 20, 1.325],
			[95, 7, 1.895]
		] as const
	).map(([oneSided, degrees, expected]) => ({
		where: `${oneSided} % one-sided, ${degrees} degrees of freedom`,
		expected,
		// what one tail leaves out, the other does too
		actual: () => coverageFactor.at({ confidence: percent(2 * oneSided - 100), degrees: count(degrees) })
	}))
});
