import { spreadingRate } from '../../src/lib/engine/physics/film/spreading-rate';
import { fraction, micrometres, mils } from '../../src/lib/engine/units/construct';
import { unitOf } from '../../src/lib/engine/units/units';
import { published } from './published';

const film = { solids: fraction(0.65), transfer: fraction(1) };
const read = 'page with both examples';

export default [
	published('spreading-rate-bulletin', '65 % solids at 5 mil', {
		of: ['spreading-rate'],
		unit: 'ft²/US gal',
		read,
		within: { relative: 2e-4, because: 'the bulletin rounds 1604.17 to 1604' },
		rows: [
			{
				where: 'US example',
				expected: 208.52,
				actual: () =>
					unitOf('spreading-rate', 'ft²/US gal').fromSi(spreadingRate.at({ ...film, dry: mils(5) }))
			}
		]
	}),
	published('spreading-rate-bulletin', '65 % solids at 125 µm', {
		of: ['spreading-rate'],
		unit: 'm²/L',
		read,
		within: { absolute: 1e-9, because: 'exact' },
		rows: [
			{
				where: 'metric example',
				expected: 5.2,
				actual: () =>
					unitOf('spreading-rate', 'm²/L').fromSi(spreadingRate.at({ ...film, dry: micrometres(125) }))
			}
		]
	})
];
