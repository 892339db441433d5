import { bestOverlap } from '../../src/lib/engine/physics/spray/best-overlap';
import { faceFilm } from '../../src/lib/engine/physics/spray/face-film';
import { strokeDeposit } from '../../src/lib/engine/physics/spray/stroke-deposit';
import { count, fraction, millimetres } from '../../src/lib/engine/units/construct';
import type { CubicMetrePerSecond, MetrePerSecond } from '../../src/lib/engine/units/dimension';
import { published } from './published';

/**
 * A round spray of radius 50 mm that lays (R² − r²)/10 µm/s: moved past, a fan of β = 2.5. In all it lays π·R⁴/20 µm·mm²/s.
 */
const flow = ((Math.PI * 50 ** 4) / 20) * 1e-12;
const deposit = () =>
	strokeDeposit.at({
		flow: flow as CubicMetrePerSecond,
		solids: fraction(1),
		transfer: fraction(1),
		speed: 0.3233 as MetrePerSecond
	});

const read = 'memory';

export default [
	published('chen-trajectory', 'overlap found best for a flat panel', {
		of: ['best-overlap'],
		unit: 'mm',
		read,
		within: { absolute: 0.15, because: 'printed to 0.1 mm; sought here in steps of 0.1 mm' },
		rows: [
			{
				where: 'of a spray 100 mm wide',
				expected: 39.2,
				actual: () => 100 * bestOverlap.at({ beta: count(2.5), from: fraction(0), to: fraction(0.5) }).overlap
			}
		]
	}),
	published('chen-trajectory', 'film at the speed found best, 323.3 mm/s', {
		of: ['face-film', 'stroke-deposit'],
		unit: 'µm',
		read,
		within: { absolute: 0.5, because: 'the film aimed at, in whole micrometres' },
		rows: [
			{
				where: 'mean over the middle of the panel',
				expected: 50,
				actual: () =>
					1e6 *
					faceFilm.at({
						face: millimetres(3 * 60.8),
						fan: millimetres(100),
						index: millimetres(60.8),
						strokes: count(9),
						deposit: deposit(),
						beta: count(2.5)
					}).mean
			}
		]
	})
];
