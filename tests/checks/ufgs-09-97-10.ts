import { potLifeAt } from '../../src/lib/engine/physics/mixing/pot-life-at';
import { fahrenheit, hours } from '../../src/lib/engine/units/construct';
import { published } from './published';

export default published('ufgs-09-97-10', '§3.7.1: pot life and temperature', {
	of: ['pot-life-at'],
	unit: 'times',
	read: '§3.7.1',
	within: { absolute: 1e-9, because: 'a rule of thumb stated as a doubling' },
	rows: [
		{
			where: '18 °F colder',
			expected: 2,
			actual: () =>
				potLifeAt.at({ stated: hours(4), statedAt: fahrenheit(77), mix: fahrenheit(59) }) / hours(4)
		}
	]
});
