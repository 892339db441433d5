import { dewPoint } from '../../src/lib/engine/physics/humidity/dew-point';
import { humidityFromWetBulb } from '../../src/lib/engine/physics/humidity/humidity-from-wet-bulb';
import { bar, celsius, percent } from '../../src/lib/engine/units/construct';
import { published } from './published';

const read = 'examples of the psychrometry chapter as coded in an open textbook-companion project';
const dew = (where: string, degrees: number, humidity: number, expected: number) => ({
	where,
	expected,
	actual: () => dewPoint.at({ air: celsius(degrees), humidity: percent(humidity) }) - 273.15
});
const humidity = (where: string, air: number, wet: number, barometer: number, expected: number) => ({
	where,
	expected,
	actual: () =>
		100 * humidityFromWetBulb.at({ air: celsius(air), wet: celsius(wet), barometer: bar(barometer) })
});

export default [
	published('rajput-thermodynamics', 'dew points of two airs', {
		of: ['dew-point'],
		unit: '°C',
		read,
		within: { absolute: 0.1, because: 'straight lines between rows of the steam table' },
		rows: [
			dew('air to an adiabatic humidifier, 35 °C, 20 %', 35, 20, 8.69),
			dew('air to a heater, 20 °C, 75 %', 20, 75, 15.46)
		]
	}),
	published('rajput-thermodynamics', 'relative humidity from the wet bulb', {
		of: ['humidity-from-wet-bulb'],
		unit: '%',
		read,
		within: { absolute: 0.5, because: 'the text uses Carrier’s equation and a steam table of three digits' },
		rows: [
			humidity('air from the humidifier, 20 °C dry, 15 °C wet', 20, 15, 1.0132, 58.5),
			humidity('adiabatic saturator, 28 °C to 18 °C at 1 bar', 28, 18, 1, 37.4)
		]
	})
];
