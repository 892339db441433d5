import { partArea } from '../../src/lib/engine/physics/film/part-area';
import { count, metres } from '../../src/lib/engine/units/construct';
import { published } from './published';

const cm = (value: number) => metres(value / 100);
const box = { length: cm(6), width: cm(5), height: cm(2), wall: cm(1) };

export default published(
	'open-box-question',
	'inside of an open box, 6 by 5 cm of wood 1 cm thick, 1 cm deep inside',
	{
		of: ['area-box'],
		unit: 'cm²',
		read: 'answer',
		within: { absolute: 1e-9, because: 'exact' },
		rows: [
			{
				where: 'what the inside adds to the outside',
				expected: 26,
				actual: () =>
					1e4 * (partArea.box.at({ ...box, sides: count(2) }) - partArea.box.at({ ...box, sides: count(1) }))
			}
		]
	}
);
