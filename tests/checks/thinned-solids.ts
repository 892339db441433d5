import { dryFilm } from '../../src/lib/engine/physics/dry-film';
import { wetFilm } from '../../src/lib/engine/physics/wet-film';
import { fraction, mils } from '../../src/lib/engine/units/construct';
import { published } from './published';

/** A gallon of 60 % solids with a quart of thinner. */
const mix = { solids: fraction(0.6), thinner: fraction(0.25) };

export default published('thinned-solids', 'share of a wet film that stays, after thinning', {
	of: ['dry-film'],
	unit: '',
	read: 'page with the worked question',
	within: { absolute: 1e-9, because: 'exact' },
	rows: [
		{
			where: 'from wet to dry',
			expected: 0.48,
			actual: () => dryFilm.at({ ...mix, wet: mils(4) }) / mils(4)
		},
		{ where: 'from dry to wet', expected: 0.48, actual: () => mils(1) / wetFilm.at({ ...mix, dry: mils(1) }) }
	]
});
