import { spreadingRate } from '../../src/lib/engine/physics/film/spreading-rate';
import { fraction, mils } from '../../src/lib/engine/units/construct';
import { unitOf } from '../../src/lib/engine/units/units';
import { published } from './published';

/** A wet film is all of the coating, so its volume share is 1. */
const gallonAt = (mil: number) => () =>
	unitOf('spreading-rate', 'ft²/US gal').fromSi(
		spreadingRate.at({ dry: mils(mil), solids: fraction(1), transfer: fraction(1) })
	);

export default published('wet-film-formulae', 'coverage of a gallon of 231 cubic inches', {
	of: ['spreading-rate'],
	unit: 'ft²/US gal',
	read: 'page',
	within: { relative: 3e-6, because: 'printed to six digits' },
	rows: [
		{ where: '1 mil wet', expected: 1604.17, actual: gallonAt(1) },
		{ where: '10 mil wet', expected: 160.417, actual: gallonAt(10) }
	]
});
