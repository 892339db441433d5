import { spreadingRate } from '../../src/lib/engine/physics/film/spreading-rate';
import { fraction, mils, percent } from '../../src/lib/engine/units/construct';
import { unitOf } from '../../src/lib/engine/units/units';
import { published } from './published';

const read = 'stored page with table and formulas';
const at = (solids: number, mil: number, expected: number) => ({
	where: `${solids} % solids, ${mil} mil`,
	expected,
	actual: () =>
		unitOf('spreading-rate', 'ft²/US gal').fromSi(
			spreadingRate.at({ dry: mils(mil), solids: percent(solids), transfer: fraction(1) })
		)
});

export default published('estimating-guide', 'theoretical spreading rates', {
	of: ['spreading-rate'],
	unit: 'ft²/US gal',
	read,
	within: { absolute: 0.7, because: 'whole square feet worked with 1604 instead of 1604.17' },
	rows: [
		at(30, 1, 481),
		at(35, 1, 561),
		at(50, 1, 802),
		at(100, 1, 1604),
		at(30, 2, 241),
		at(60, 3, 321),
		at(50, 8, 100)
	]
});
