import { absolutePressure } from '../../src/lib/engine/physics/air/absolute-pressure';
import { chokedAirFlow } from '../../src/lib/engine/physics/air/choked-air-flow';
import { celsius, fraction, pascal, squareMetres } from '../../src/lib/engine/units/construct';
import { published } from './published';

const outside = pascal(94e3);

export default published('cengel-fluid-mechanics', 'example 12-5: air loss from a flat tyre', {
	of: ['choked-air-flow', 'absolute-pressure'],
	unit: 'kg/min',
	// the problem was read, the printed answer was not
	read: 'memory',
	within: { absolute: 0.001, because: 'printed to three decimals, from whole degrees' },
	rows: [
		{
			where: '220 kPa gauge, a leak of 4 mm',
			expected: 0.554,
			actual: () =>
				60 *
				chokedAirFlow.at({
					area: squareMetres((Math.PI / 4) * 0.004 ** 2),
					coefficient: fraction(1),
					upstream: absolutePressure.at({ gauge: pascal(220e3), air: outside }),
					downstream: outside,
					temperature: celsius(25)
				})
		}
	]
});
