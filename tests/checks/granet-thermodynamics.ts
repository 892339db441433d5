import { dewPoint } from '../../src/lib/engine/physics/humidity/dew-point';
import { fahrenheit, percent } from '../../src/lib/engine/units/construct';
import { unitOf } from '../../src/lib/engine/units/units';
import { published } from './published';

export default published(
	'granet-thermodynamics',
	'problems 7.13 and 7.17: dew point by steam table and chart',
	{
		of: ['dew-point'],
		unit: '°F',
		read: 'problems as worked in an open textbook-companion project',
		within: { absolute: 0.5, because: 'printed in whole degrees' },
		rows: [
			{
				where: '80 °F, 50 %',
				expected: 60,
				actual: () =>
					unitOf('temperature', '°F').fromSi(dewPoint.at({ air: fahrenheit(80), humidity: percent(50) }))
			}
		]
	}
);
