import { cupViscosity } from '../../src/lib/engine/physics/mixing/cup-viscosity';
import { seconds } from '../../src/lib/engine/units/construct';
import { published } from './published';

const oil = (cup: 1 | 2 | 3 | 4 | 5, time: number, viscosity: number) => ({
	where: `Ford ${cup}, ${time} s`,
	expected: viscosity,
	actual: () => cupViscosity[`ford-${cup}`].at({ time: seconds(time) }) * 1e6
});

const read = 'table of certified oils on a viscosity laboratory’s page';
const table = 'flow times of certified oils in Ford cups';

export default [
	published('astm-d1200', 'flow times of certified oils in cups 1 to 4', {
		of: ['viscosity-ford-1', 'viscosity-ford-2', 'viscosity-ford-3', 'viscosity-ford-4'],
		table,
		unit: 'mm²/s',
		read,
		within: { relative: 0.02, because: 'half a second of a whole-second reading' },
		rows: [
			oil(1, 70, 17),
			oil(2, 42, 34),
			oil(2, 64, 66),
			oil(3, 35, 66),
			oil(3, 58, 120),
			oil(4, 36, 120),
			oil(4, 64, 230)
		]
	}),
	published('astm-d1200', 'flow times of certified oils in cup 5', {
		of: ['viscosity-ford-5'],
		table,
		unit: 'mm²/s',
		read,
		within: { relative: 0.035, because: 'whole seconds, and the straight line fits worst at its long end' },
		rows: [oil(5, 40, 460), oil(5, 70, 850)]
	})
];
