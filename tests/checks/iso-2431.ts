import { cupViscosity } from '../../src/lib/engine/physics/mixing/cup-viscosity';
import { seconds } from '../../src/lib/engine/units/construct';
import { published } from './published';

const end = (bore: 3 | 4 | 5 | 6, time: 30 | 100, viscosity: number) => ({
	where: `${bore} mm, ${time} s`,
	expected: viscosity,
	actual: () => cupViscosity[`iso-2431-${bore}mm`].at({ time: seconds(time) }) * 1e6
});

export default published('iso-2431', 'range of viscosity of each cup', {
	of: [3, 4, 5, 6].map((bore) => `viscosity-iso-2431-${bore}mm`),
	unit: 'mm²/s',
	read: 'memory',
	within: { absolute: 0.7, because: 'printed in whole mm²/s, the low end rounded up' },
	rows: [
		end(3, 30, 7),
		end(3, 100, 42),
		end(4, 30, 35),
		end(4, 100, 135),
		end(5, 30, 91),
		end(5, 100, 326),
		end(6, 30, 188),
		end(6, 100, 684)
	]
});
