import { cupViscosity } from '../../src/lib/engine/physics/cup-viscosity';
import { seconds } from '../../src/lib/engine/units/construct';
import { published } from './published';

const oil = (cup: 3 | 4, time: number, viscosity: number) => ({
	where: `Ford ${cup}, ${time} s`,
	expected: viscosity,
	actual: () => cupViscosity[`ford-${cup}`].at({ time: seconds(time) }) * 1e6
});

export default published('astm-d1200', 'flow times of certified oils', {
	of: ['viscosity-ford-4'],
	unit: 'mm²/s',
	read: 'table of certified oils on a viscosity laboratory’s page',
	within: { relative: 0.015, because: 'half a second of a whole-second reading' },
	rows: [oil(3, 35, 66), oil(3, 58, 120), oil(4, 36, 120), oil(4, 64, 230)]
});
