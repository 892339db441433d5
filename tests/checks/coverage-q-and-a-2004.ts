import { spreadingRate } from '../../src/lib/engine/physics/film/spreading-rate';
import { mils, percent } from '../../src/lib/engine/units/construct';
import { unitOf } from '../../src/lib/engine/units/units';
import { published } from './published';

export default published('coverage-q-and-a-2004', '52 % solids, 35 % transfer, 1.5 mil dry', {
	of: ['spreading-rate'],
	unit: 'ft²/US gal',
	read: 'page with its worked example',
	within: {
		relative: 1e-3,
		because: 'printed as 194.5 where its own factors, 1604 · 0.52 · 0.35/1.5, give 194.6'
	},
	rows: [
		{
			where: 'practical coverage',
			expected: 194.5,
			actual: () =>
				unitOf('spreading-rate', 'ft²/US gal').fromSi(
					spreadingRate.at({ dry: mils(1.5), solids: percent(52), transfer: percent(35) })
				)
		}
	]
});
