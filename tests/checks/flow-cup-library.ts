import { cupViscosity } from '../../src/lib/engine/physics/mixing/cup-viscosity';
import { seconds } from '../../src/lib/engine/units/construct';
import { published } from './published';

const cup = (id: keyof typeof cupViscosity, time: number, viscosity: number) => ({
	where: `${id}, ${time} s`,
	expected: viscosity,
	actual: () => cupViscosity[id].at({ time: seconds(time) }) * 1e6
});

export default published('flow-cup-library', 'examples in its documentation', {
	of: [
		'viscosity-dip-cup-2',
		'viscosity-ford-4',
		'viscosity-iso-2431-3mm',
		'viscosity-din-53211-4mm-withdrawn'
	],
	unit: 'mm²/s',
	read: 'examples beside each function of the library',
	within: { absolute: 5e-5, because: 'printed to four decimals' },
	rows: [
		cup('dip-cup-2', 35, 73.5),
		cup('ford-4', 80, 290.7135),
		cup('iso-2431-3mm', 57, 21.7422),
		cup('din-53211-4mm-withdrawn', 97, 438.6302)
	]
});
