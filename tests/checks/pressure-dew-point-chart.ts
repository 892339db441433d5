import { atmosphericDewPoint } from '../../src/lib/engine/physics/humidity/atmospheric-dew-point';
import { pressureDewPoint } from '../../src/lib/engine/physics/humidity/pressure-dew-point';
import { bar, celsius } from '../../src/lib/engine/units/construct';
import { published } from './published';

const table = 'dew points by pressure';
const read = 'chart by the Sonntag equation';
const within = { absolute: 0.01, because: 'printed to hundredths, by another equation of saturation' };

const inLine = (gauge: number, dew: number, expected: number) => ({
	where: `${dew} °C at ${gauge} bar`,
	expected,
	actual: () => pressureDewPoint.at({ dew: celsius(dew), gauge: bar(gauge) }) - 273.15
});
const inShop = (gauge: number, dew: number, expected: number) => ({
	where: `${dew} °C in a line of ${gauge} bar`,
	expected,
	actual: () => atmosphericDewPoint.at({ dew: celsius(dew), gauge: bar(gauge) }) - 273.15
});

export default [
	published('pressure-dew-point-chart', 'dew point in the line', {
		of: ['pressure-dew-point', 'vapour-pressure', 'saturation-temperature'],
		table,
		unit: '°C',
		read,
		within,
		rows: [
			inLine(3, 0, 20.55),
			inLine(5, -10, 13.45),
			inLine(7, 0, 32.27),
			inLine(7, -20, 4.05),
			inLine(7, -40, -20.17)
		]
	}),
	published('pressure-dew-point-chart', 'dew point in the shop', {
		of: ['atmospheric-dew-point', 'vapour-pressure', 'saturation-temperature'],
		table: `${table}, read backwards`,
		unit: '°C',
		read,
		within,
		rows: [
			inShop(5, 0.03, -20),
			inShop(7, 4.05, -20),
			inShop(7, 17.93, -10),
			inShop(7, -31.9, -50),
			inShop(1, -12.64, -20)
		]
	})
];
