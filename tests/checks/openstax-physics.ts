import { absoluteHumidity } from '../../src/lib/engine/physics/humidity/absolute-humidity';
import { celsius, percent } from '../../src/lib/engine/units/construct';
import { published } from './published';

const at = (where: string, humidity: number, expected: number) => ({
	where,
	expected,
	actual: () => 1000 * absoluteHumidity.at({ air: celsius(25), humidity: percent(humidity) })
});

export default published('openstax-physics', 'example 13.13: density of the vapour in air of 25 °C', {
	of: ['absolute-humidity'],
	unit: 'g/m³',
	read: 'example with its table values as worked in an open textbook-companion project',
	within: { absolute: 0.06, because: 'the saturated value is printed to one decimal' },
	rows: [at('saturated, Table 13.5', 100, 23.0), at('40.9 %', 40.9, 9.4)]
});
