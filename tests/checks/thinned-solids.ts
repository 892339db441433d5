import { blendSolids } from '../../src/lib/engine/physics/mixing/blend-solids';
import { dryFilm } from '../../src/lib/engine/physics/film/dry-film';
import { wetFilm } from '../../src/lib/engine/physics/film/wet-film';
import { fraction, mils } from '../../src/lib/engine/units/construct';
import type { CubicMetre } from '../../src/lib/engine/units/dimension';
import { unitOf } from '../../src/lib/engine/units/units';
import { published } from './published';

/** A gallon of 60 % solids with a quart of thinner. */
const mix = { solids: fraction(0.6), thinner: fraction(0.25) };
const gallons = (many: number) => unitOf('volume', 'US gal').toSi(many) as CubicMetre;

export default published('thinned-solids', 'share of a wet film that stays, after thinning', {
	of: ['dry-film', 'wet-film', 'blend-solids'],
	unit: '',
	read: 'page with the worked question',
	within: { absolute: 1e-9, because: 'exact' },
	rows: [
		{
			where: 'from wet to dry',
			expected: 0.48,
			actual: () => dryFilm.at({ ...mix, wet: mils(4) }) / mils(4)
		},
		{
			where: 'from dry to wet',
			expected: 0.48,
			actual: () => mils(1) / wetFilm.at({ ...mix, dry: mils(1) })
		},
		{
			where: 'solids of the thinned coating',
			expected: 0.48,
			actual: () =>
				blendSolids.at({ volumes: [gallons(1), gallons(0.25)], solids: [fraction(0.6), fraction(0)] })
		}
	]
});
