import { humidityFromWetBulb } from '../../src/lib/engine/physics/humidity/humidity-from-wet-bulb';
import { celsius, pascal } from '../../src/lib/engine/units/construct';
import { published } from './published';

export default published(
	'ashrae-fundamentals-2017',
	'ch. 1, Example 1: humidity of 40 °C air, 20 °C wet bulb',
	{
		of: ['humidity-from-wet-bulb'],
		unit: '1',
		read: 'example as quoted in the test suite of an open-source psychrometrics library',
		within: { absolute: 0.005, because: 'printed to two decimals, off a chart' },
		rows: [
			{
				where: 'Example 1, 101.325 kPa',
				expected: 0.14,
				actual: () =>
					humidityFromWetBulb.at({ air: celsius(40), wet: celsius(20), barometer: pascal(101_325) })
			}
		]
	}
);
