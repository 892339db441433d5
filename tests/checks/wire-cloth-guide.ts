import { meshOpening } from '../../src/lib/engine/physics/mixing/mesh-opening';
import { count, metres } from '../../src/lib/engine/units/construct';
import { published } from './published';

export default published('wire-cloth-guide', 'opening of a cloth of 10 wires to the inch', {
	of: ['mesh-opening'],
	unit: 'in',
	read: 'worked example',
	within: { absolute: 5e-4, because: 'printed to three decimals' },
	rows: [
		{
			where: 'wire of 0.025 in',
			expected: 0.075,
			actual: () => meshOpening.at({ mesh: count(10), wire: metres(0.025 * 0.0254) }) / 0.0254
		}
	]
});
