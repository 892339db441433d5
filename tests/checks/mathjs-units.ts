import { unit } from 'mathjs';
import type { Dimension } from '../../src/lib/engine/units/dimension';
import { parseQuantity } from '../../src/lib/engine/units/parse';
import { unitOf } from '../../src/lib/engine/units/units';
import { published } from './published';

const si = (typed: string, dimension: Dimension) => () => {
	const parsed = parseQuantity(typed, dimension);
	return parsed.ok ? parsed.value : NaN;
};
const one = (dimension: Dimension, id: string) => () => unitOf(dimension, id).toSi(1);
const theirs = (amount: number, of: string, base: string) => unit(amount, of).toNumber(base);

/**
 * `degF` is a point here, and a difference in js-quantities: five of them are 258.15 K to the one and 2.78 K to the other.
 * The difference is therefore taken between two points.
 */
export default published('mathjs', 'units the other lists lack, and the trap of the temperatures', {
	of: ['units'],
	unit: 'SI',
	read: 'library mathjs 15.2.0, run in this test',
	within: { relative: 1e-9, because: 'the library holds its factors to twelve digits or more' },
	rows: [
		{ where: '5 degF is a point', expected: theirs(5, 'degF', 'K'), actual: si('5 °F', 'temperature') },
		{
			where: 'between 300 and 305 degF',
			expected: theirs(305, 'degF', 'K') - theirs(300, 'degF', 'K'),
			actual: si('5 °F', 'temperature-difference')
		},
		{ where: '1 psi', expected: theirs(1, 'psi', 'Pa'), actual: one('pressure', 'psi') },
		{ where: '1 ft/min', expected: theirs(1, 'ft/minute', 'm/s'), actual: one('speed', 'ft/min') },
		{
			where: '1 lb per US gallon',
			expected: theirs(1, 'lbm/gallon', 'kg/m^3'),
			actual: one('density', 'lb/US gal')
		}
	]
});
