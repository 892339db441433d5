import { chokedAirFlow } from '../../src/lib/engine/physics/air/choked-air-flow';
import { subcriticalAirFlow } from '../../src/lib/engine/physics/air/subcritical-air-flow';
import { fraction, kelvin, pascal, squareMetres } from '../../src/lib/engine/units/construct';
import { published } from './published';

/** Air at 1 MPa and 360 K before a converging nozzle of 10 cm². */
const nozzle = {
	area: squareMetres(0.001),
	coefficient: fraction(1),
	upstream: pascal(1e6),
	temperature: kelvin(360)
};

export default published('moran-thermal-systems', 'example 12.8: effect of back pressure on mass flow', {
	of: ['choked-air-flow', 'subcritical-air-flow'],
	unit: 'kg/s',
	read: 'example 12.8 as worked in an open textbook-companion project',
	within: { absolute: 0.005, because: 'printed to two decimals' },
	rows: [
		{
			where: '500 kPa behind it',
			expected: 2.13,
			actual: () => chokedAirFlow.at({ ...nozzle, downstream: pascal(500e3) })
		},
		{
			where: '784 kPa behind it',
			expected: 1.79,
			actual: () => subcriticalAirFlow.at({ ...nozzle, downstream: pascal(784e3) })
		}
	]
});
