import { dewPoint } from '../../src/lib/engine/physics/humidity/dew-point';
import { celsius, percent } from '../../src/lib/engine/units/construct';
import { published } from './published';

export default published('cengel-thermodynamics', 'example 14-2: windows that fog', {
	of: ['dew-point'],
	unit: '°C',
	read: 'example 14-2 as worked in an open textbook-companion project',
	within: { absolute: 0.06, because: 'printed to one decimal' },
	rows: [
		{
			where: '20 °C, 75 %',
			expected: 15.4,
			actual: () => dewPoint.at({ air: celsius(20), humidity: percent(75) }) - 273.15
		}
	]
});
