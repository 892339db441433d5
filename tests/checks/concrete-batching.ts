import { ratioByMass } from '../../src/lib/engine/physics/mixing/ratio-by-mass';
import { ratioByVolume } from '../../src/lib/engine/physics/mixing/ratio-by-volume';
import { gramsPerMillilitre, ratio } from '../../src/lib/engine/units/construct';
import { published } from './published';

/** Specific gravities of cement and water. */
const densities = { densityA: gramsPerMillilitre(3.15), densityB: gramsPerMillilitre(1) };

export default published('concrete-batching', 'a cubic foot of cement, 196.65 lb, to one of water, 62.4 lb', {
	of: ['ratio-by-mass', 'ratio-by-volume'],
	unit: ':1',
	read: 'article with its figures',
	within: { relative: 1e-3, because: 'water at 62.4 lb has three digits' },
	rows: [
		{
			where: 'one to one by volume, on a scale',
			expected: 196.65 / 62.4,
			actual: () => ratioByMass.at({ byVolume: ratio(1), ...densities })
		},
		{
			where: 'those weights, by volume',
			expected: 1,
			actual: () => ratioByVolume.at({ byMass: ratio(196.65 / 62.4), ...densities })
		}
	]
});
