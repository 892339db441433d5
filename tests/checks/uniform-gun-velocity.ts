import { fanUniformity } from '../../src/lib/engine/physics/fan-uniformity';
import { fraction } from '../../src/lib/engine/units/construct';
import { published } from './published';

const read = 'abstract';
const variance = (overlap: number) => fanUniformity(fraction(overlap)).variance;

/** Below half of the fan, where two strokes overlap and no more, as in the paper. */
const OVERLAPS = Array.from({ length: 91 }, (_, step) => step / 200);

export default [
	published('uniform-gun-velocity', 'parabolic fan: smallest variance of the film', {
		of: ['fan-uniformity'],
		unit: '',
		read,
		within: { absolute: 1e-4, because: 'printed as about 0.0025' },
		rows: [
			{
				where: 'over all overlaps below 45 %',
				expected: 0.0025,
				actual: () => Math.min(...OVERLAPS.map(variance))
			}
		]
	}),
	published('uniform-gun-velocity', 'parabolic fan: overlap that gives it', {
		of: ['fan-uniformity'],
		unit: '',
		read,
		within: { absolute: 0.01, because: 'printed as between 0.29 and 0.31' },
		rows: [
			{
				where: 'best overlap below 45 %',
				expected: 0.3,
				actual: () =>
					OVERLAPS.reduce((best, overlap) => (variance(overlap) < variance(best) ? overlap : best))
			}
		]
	})
];
