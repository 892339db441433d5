import { absolutePressure } from '../../src/lib/engine/physics/air/absolute-pressure';
import { criticalPressureRatio } from '../../src/lib/engine/physics/air/critical-pressure-ratio';
import { psi, ratio } from '../../src/lib/engine/units/construct';
import { published } from './published';

const air = psi(14.7);
const limit = () => criticalPressureRatio.at({ heatRatio: ratio(1.4) });

export default published('choked-flow-tutorial', 'gauge pressures at which air chokes', {
	of: ['critical-pressure-ratio', 'absolute-pressure'],
	unit: 'psig',
	read: 'page with its two examples',
	within: { absolute: 0.05, because: 'the page rounds the ratio to 0.528' },
	rows: [
		{
			where: 'behind 80 psig: choked below',
			expected: 35.3,
			actual: () => (limit() * absolutePressure.at({ gauge: psi(80), air }) - air) / psi(1)
		},
		{
			where: 'into the open: choked above',
			expected: 13.14,
			actual: () => (air / limit() - air) / psi(1)
		}
	]
});
