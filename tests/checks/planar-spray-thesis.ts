import { bestOverlap } from '../../src/lib/engine/physics/spray/best-overlap';
import { count, fraction } from '../../src/lib/engine/units/construct';
import { published } from './published';

export default published('planar-spray-thesis', 'elliptical fan: overlap for the most even film', {
	of: ['best-overlap', 'fan-uniformity'],
	unit: '',
	read: 'abstract',
	within: {
		absolute: 0.015,
		because: 'printed as 16 to 18 percent, by three measures of evenness and in whole percent'
	},
	rows: [
		{
			where: 'best overlap below 50 %',
			expected: 0.17,
			actual: () => bestOverlap.at({ beta: count(1.5), from: fraction(0), to: fraction(0.5) }).overlap
		}
	]
});
