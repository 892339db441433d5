import { bestOverlap } from '../../src/lib/engine/physics/spray/best-overlap';
import { count, fraction } from '../../src/lib/engine/units/construct';
import { published } from './published';

const read = 'abstract';

/** A parabola, below half of the fan, where two strokes overlap and no more, as in the paper. */
const best = () => bestOverlap.at({ beta: count(2), from: fraction(0), to: fraction(0.45) });

export default [
	published('uniform-gun-velocity', 'parabolic fan: smallest variance of the film', {
		of: ['fan-uniformity', 'best-overlap'],
		unit: '',
		read,
		within: { absolute: 1e-4, because: 'printed as about 0.0025' },
		rows: [{ where: 'over all overlaps below 45 %', expected: 0.0025, actual: () => best().variance }]
	}),
	published('uniform-gun-velocity', 'parabolic fan: overlap that gives it', {
		of: ['fan-uniformity', 'best-overlap'],
		unit: '',
		read,
		within: { absolute: 0.01, because: 'printed as between 0.29 and 0.31' },
		rows: [{ where: 'best overlap below 45 %', expected: 0.3, actual: () => best().overlap }]
	})
];
