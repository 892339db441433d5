import psychrolib from 'psychrolib';
import { saturationPressureIce } from '../../src/lib/engine/physics/humidity/saturation-pressure-ice';
import { saturationTemperature } from '../../src/lib/engine/physics/humidity/saturation-temperature';
import { celsius, pascal } from '../../src/lib/engine/units/construct';
import { published } from './published';

psychrolib.SetUnitSystem(psychrolib.SI);
const read = 'library psychrolib 1.1.1, run in this test';

export default [
	published('psychrolib', 'saturation pressure over ice', {
		of: ['saturation-pressure-ice'],
		unit: 'Pa',
		read,
		within: { relative: 1e-9, because: 'both carry out the same equation in double precision' },
		rows: [-90, -70, -40, -20, -1].map((degrees) => ({
			where: `${degrees} °C`,
			expected: psychrolib.GetSatVapPres(degrees),
			actual: () => saturationPressureIce.at({ air: celsius(degrees) })
		}))
	}),
	published('psychrolib', 'dew point of a vapour pressure', {
		of: ['saturation-temperature'],
		unit: '°C',
		read,
		within: { absolute: 0.002, because: 'the library stops its search at a thousandth of a degree' },
		rows: [30, 400, 1200, 5000, 60_000].map((vapour) => ({
			where: `${vapour} Pa`,
			expected: psychrolib.GetTDewPointFromVapPres(100, vapour),
			actual: () => saturationTemperature.at({ vapour: pascal(vapour) }) - 273.15
		}))
	})
];
