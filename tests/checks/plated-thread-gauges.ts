import { fitGrowth } from '../../src/lib/engine/physics/film/fit-growth';
import { mils } from '../../src/lib/engine/units/construct';
import { unitOf } from '../../src/lib/engine/units/units';
import { published } from './published';

const inches = (metres: number) => unitOf('length', 'in').fromSi(metres);
const plating = mils(0.3);

export default published('plated-thread-gauges', 'plating of .0002 to .0003 in a side', {
	of: ['fit-growth-thread', 'fit-growth-bore'],
	unit: 'in',
	read: 'page with its example for thread rings',
	within: { absolute: 1e-9, because: 'exact' },
	rows: [
		{
			where: 'largest allowance on the pitch diameter',
			expected: 0.0012,
			actual: () => inches(fitGrowth.thread.at({ dry: plating }))
		},
		{
			where: 'minor diameter of the ring, .2103 before',
			expected: 0.2097,
			actual: () => 0.2103 + inches(fitGrowth.bore.at({ dry: plating }))
		}
	]
});
