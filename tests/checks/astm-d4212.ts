import { cupViscosity } from '../../src/lib/engine/physics/mixing/cup-viscosity';
import { seconds } from '../../src/lib/engine/units/construct';
import { published } from './published';

const oil = (cup: 1 | 2 | 3 | 4 | 5, time: number, viscosity: number) => ({
	where: `dip cup ${cup}, ${time} s`,
	expected: viscosity,
	actual: () => cupViscosity[`dip-cup-${cup}`].at({ time: seconds(time) }) * 1e6
});

export default published('astm-d4212', 'flow times of certified oils', {
	of: [1, 2, 3, 4, 5].map((cup) => `viscosity-dip-cup-${cup}`),
	unit: 'mm²/s',
	read: 'table of certified oils on a viscosity laboratory’s page',
	within: {
		relative: 0.04,
		because: 'times are whole seconds and the straight-line equations fit worst at the ends of a cup'
	},
	rows: [
		oil(1, 45, 17),
		oil(1, 60, 34),
		oil(2, 33, 66),
		oil(2, 48, 120),
		oil(3, 27, 230),
		oil(3, 47, 460),
		oil(4, 21, 230),
		oil(4, 36, 460),
		oil(4, 62, 850),
		oil(5, 37, 850),
		oil(5, 70, 1600)
	]
});
