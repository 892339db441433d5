import { dewPoint } from '../../src/lib/engine/physics/humidity/dew-point';
import { saturationPressure } from '../../src/lib/engine/physics/humidity/saturation-pressure';
import { celsius, fraction } from '../../src/lib/engine/units/construct';
import { published } from './published';

const read = 'table rows quoted in the test suite of an open-source psychrometrics library';
const at = (degrees: number) => () => saturationPressure.at({ air: celsius(degrees) });

export default [
	published('ashrae-fundamentals-2017', 'ch. 1, Table 3: saturation pressure of water', {
		of: ['saturation-pressure'],
		unit: 'Pa',
		read,
		within: { relative: 300e-6, because: 'the accuracy claimed for the equation' },
		rows: [
			{ where: '5 °C', expected: 872.6, actual: at(5) },
			{ where: '25 °C', expected: 3169.7, actual: at(25) },
			{ where: '50 °C', expected: 12351.3, actual: at(50) },
			{ where: '100 °C', expected: 101418, actual: at(100) },
			{ where: '150 °C', expected: 476101.4, actual: at(150) }
		]
	}),
	published('ashrae-fundamentals-2017', 'ch. 1, Example 1: dew point of 40 °C air, 20 °C wet bulb', {
		of: ['dew-point'],
		unit: '°C',
		read,
		within: { absolute: 0.5, because: 'the example reads dew point and humidity off a chart' },
		rows: [
			{
				where: 'Example 1, relative humidity 0.14',
				expected: 7,
				actual: () => dewPoint.at({ air: celsius(40), humidity: fraction(0.14) }) - 273.15
			}
		]
	})
];
