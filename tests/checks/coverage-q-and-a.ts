import { batchVolume } from '../../src/lib/engine/physics/film/batch-volume';
import { wetFilm } from '../../src/lib/engine/physics/film/wet-film';
import { spreadingRate } from '../../src/lib/engine/physics/film/spreading-rate';
import { fraction, mils, percent } from '../../src/lib/engine/units/construct';
import type { SquareMetre } from '../../src/lib/engine/units/dimension';
import { unitOf } from '../../src/lib/engine/units/units';
import { published } from './published';

const film = { dry: mils(1.5), solids: fraction(0.52), transfer: fraction(0.3) };
const read = 'question and answer with its worked example';

export default [
	published('coverage-q-and-a', 'one gallon of 52 % solids, 30 % transfer, 1.5 mil dry', {
		of: ['spreading-rate'],
		unit: 'ft²/US gal',
		read,
		within: { absolute: 0.5, because: 'printed in whole square feet' },
		rows: [
			{
				where: 'area covered',
				expected: 167,
				actual: () => unitOf('spreading-rate', 'ft²/US gal').fromSi(spreadingRate.at(film))
			}
		]
	}),
	published('coverage-q-and-a', 'the same example read backwards', {
		of: ['batch-volume'],
		unit: 'US gal',
		read,
		within: { relative: 0.003, because: 'the area is rounded to a whole square foot' },
		rows: [
			{
				where: 'gallons for 167 ft²',
				expected: 1,
				actual: () =>
					unitOf('volume', 'US gal').fromSi(
						batchVolume.at({ ...film, area: unitOf('area', 'ft²').toSi(167) as SquareMetre })
					)
			}
		]
	}),
	published('coverage-q-and-a', 'dry to wet film', {
		of: ['wet-film'],
		unit: 'mil',
		read,
		within: { absolute: 0.005, because: 'printed to two decimals' },
		rows: [
			{
				where: '1.5 mil dry at 42 %',
				expected: 3.57,
				actual: () =>
					unitOf('length', 'mil').fromSi(
						wetFilm.at({ dry: mils(1.5), solids: percent(42), thinner: fraction(0) })
					)
			}
		]
	})
];
