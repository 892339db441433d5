import { holeArea } from '../../src/lib/engine/physics/film/hole-area';
import { partArea } from '../../src/lib/engine/physics/film/part-area';
import { count, metres } from '../../src/lib/engine/units/construct';
import { published } from './published';

const cm = (value: number) => metres(value / 100);
const [diameter, hole, length] = [cm(60), cm(20), cm(300)];

export default published('tube-area-question', '60 and 20 cm across, 3 m long, with both ends', {
	of: ['area-ring', 'area-bar', 'hole-area', 'area-tube'],
	unit: 'cm²',
	read: 'answer with its sums',
	within: { absolute: 0.05, because: 'printed to one decimal' },
	rows: [
		{
			where: 'as a long ring',
			expected: 80424.8,
			actual: () =>
				1e4 * partArea.ring.at({ outer: diameter, inner: hole, thickness: length, sides: count(2) })
		},
		{
			where: 'as a bar with a hole through it',
			expected: 80424.8,
			actual: () =>
				1e4 *
				(partArea.bar.at({ diameter, length, sides: count(2) }) +
					holeArea.at({ holes: count(1), diameter: hole, thickness: length, sides: count(2) }))
		},
		{
			where: 'outside and inside, without the ends: 24 000 π',
			expected: 24_000 * Math.PI,
			actual: () => 1e4 * partArea.tube.at({ outer: diameter, inner: hole, length, sides: count(2) })
		}
	]
});
