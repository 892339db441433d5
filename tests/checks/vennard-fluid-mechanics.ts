import { chokedAirFlow } from '../../src/lib/engine/physics/air/choked-air-flow';
import { subcriticalAirFlow } from '../../src/lib/engine/physics/air/subcritical-air-flow';
import { fraction, kelvin, psi, squareMetres } from '../../src/lib/engine/units/construct';
import { published } from './published';

const POUND = 0.45359237;
/** Air at 114.7 psia and 560 °R before a nozzle 1 inch across. */
const nozzle = {
	area: squareMetres(0.005454 * 0.3048 ** 2),
	coefficient: fraction(1),
	upstream: psi(114.7),
	temperature: kelvin(560 / 1.8)
};

export default published('vennard-fluid-mechanics', 'example 5.4: air from a tank through a nozzle', {
	of: ['choked-air-flow', 'subcritical-air-flow'],
	unit: 'lb/s',
	read: 'example 5.4 as worked and executed in an open textbook-companion project',
	within: { absolute: 0.006, because: 'printed to two decimals, with g at 32.2 and the ratio at 0.825' },
	rows: [
		{
			where: 'into the open, 14.7 psia',
			expected: 2.03,
			actual: () => chokedAirFlow.at({ ...nozzle, downstream: psi(14.7) }) / POUND
		},
		{
			where: 'into 94.7 psia',
			expected: 1.58,
			actual: () => subcriticalAirFlow.at({ ...nozzle, downstream: psi(94.7) }) / POUND
		}
	]
});
