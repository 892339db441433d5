import { absoluteHumidity } from '../../src/lib/engine/physics/humidity/absolute-humidity';
import { dewPoint } from '../../src/lib/engine/physics/humidity/dew-point';
import { humidityFromWetBulb } from '../../src/lib/engine/physics/humidity/humidity-from-wet-bulb';
import { bar, celsius, pascal, percent } from '../../src/lib/engine/units/construct';
import { published } from './published';

const read = 'examples 15.1 and 15.2 as worked and run in an open textbook-companion project';

export default [
	published('nag-thermodynamics', 'examples 15.1 and 15.2: humidity from the wet bulb', {
		of: ['humidity-from-wet-bulb'],
		unit: '%',
		read,
		within: {
			absolute: 0.5,
			because: 'steam-table values of three digits go into a difference; 15.1 enters 3.336 for 3.363 kPa'
		},
		rows: [
			{
				where: '15.1: 32 °C dry, 26 °C wet, 1.0132 bar',
				expected: 61.4,
				within: 1.2,
				actual: () =>
					100 * humidityFromWetBulb.at({ air: celsius(32), wet: celsius(26), barometer: bar(1.0132) })
			},
			{
				where: '15.2: 30 °C leaves saturated at 20 °C, 100 kPa',
				expected: 39.9,
				actual: () =>
					100 * humidityFromWetBulb.at({ air: celsius(30), wet: celsius(20), barometer: pascal(100_000) })
			}
		]
	}),
	published('nag-thermodynamics', 'example 15.1: dew point', {
		of: ['dew-point'],
		unit: '°C',
		read,
		within: { absolute: 0.5, because: 'the text reads its table at 0.030 bar for 0.0295' },
		rows: [
			{
				where: '32 °C, 61.37 %',
				expected: 24.1,
				actual: () => dewPoint.at({ air: celsius(32), humidity: percent(61.37) }) - 273.15
			}
		]
	}),
	published('nag-thermodynamics', 'example 15.1: density of the water vapour', {
		of: ['absolute-humidity'],
		unit: 'g/m³',
		read,
		within: { relative: 0.01, because: 'saturation pressure of 32 °C is taken as 0.048 bar' },
		rows: [
			{
				where: '32 °C, 61.37 %',
				expected: 20.93,
				actual: () => 1000 * absoluteHumidity.at({ air: celsius(32), humidity: percent(61.37) })
			}
		]
	})
];
