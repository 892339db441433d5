import psychrolib from 'psychrolib';
import { dewPoint } from '../../src/lib/engine/physics/humidity/dew-point';
import { saturationPressure } from '../../src/lib/engine/physics/humidity/saturation-pressure';
import { celsius, percent } from '../../src/lib/engine/units/construct';
import { published } from './published';

psychrolib.SetUnitSystem(psychrolib.SI);
const read = 'library psychrolib 1.1.1, run in this test';

const AIR: readonly (readonly [degrees: number, humidity: number])[] = [
	[5, 80],
	[10, 60],
	[15, 70],
	[20, 50],
	[20, 85],
	[25, 50],
	[25, 70],
	[30, 55],
	[30, 80],
	[35, 70],
	[40, 50]
];

export default [
	published('psychrolib', 'dew point over a shop’s climate', {
		of: ['dew-point'],
		unit: '°C',
		read,
		within: { absolute: 0.03, because: 'Magnus and ASHRAE equations differ by so much from 5 to 40 °C' },
		rows: AIR.map(([degrees, humidity]) => ({
			where: `${degrees} °C, ${humidity} %`,
			expected: psychrolib.GetTDewPointFromRelHum(degrees, humidity / 100),
			actual: () => dewPoint.at({ air: celsius(degrees), humidity: percent(humidity) }) - 273.15
		}))
	}),
	published('psychrolib', 'saturation pressure between the table rows', {
		of: ['saturation-pressure'],
		unit: 'Pa',
		read,
		within: { relative: 1e-9, because: 'both carry out the same equation in double precision' },
		rows: [12.5, 33, 61, 120, 199].map((degrees) => ({
			where: `${degrees} °C`,
			expected: psychrolib.GetSatVapPres(degrees),
			actual: () => saturationPressure.at({ air: celsius(degrees) })
		}))
	})
];
