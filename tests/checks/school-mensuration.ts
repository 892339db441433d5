import { batchVolume } from '../../src/lib/engine/physics/film/batch-volume';
import { partArea } from '../../src/lib/engine/physics/film/part-area';
import { count, fraction, metres, micrometres, squareMetres } from '../../src/lib/engine/units/construct';
import { published } from './published';

/** A tenth of the tunnel, to fit a shop: inner radius 6 m, wall 2 m, 25 m long. */
const tunnel = () =>
	100 * partArea.tube.at({ outer: metres(1.6), inner: metres(1.2), length: metres(2.5), sides: count(2) });

const within = { relative: 5e-4, because: 'worked with 22/7 for π' };
const read = 'worked example as reproduced on a study page';

export default [
	published('school-mensuration', 'tunnel painted inside and outside: area', {
		of: ['area-tube'],
		unit: 'm²',
		read,
		within,
		rows: [{ where: 'both surfaces', expected: 2200, actual: tunnel }]
	}),
	published('school-mensuration', 'tunnel painted inside and outside: paint at 10 m² per litre', {
		of: ['batch-volume'],
		unit: 'L',
		read,
		within,
		rows: [
			{
				where: 'litres',
				expected: 220,
				// 10 m² from a litre is a tenth of a millimetre, all of it taken as staying
				actual: () =>
					1e3 *
					batchVolume.at({
						area: squareMetres(tunnel()),
						dry: micrometres(100),
						solids: fraction(1),
						transfer: fraction(1)
					})
			}
		]
	})
];
