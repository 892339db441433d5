import { partArea } from '../../src/lib/engine/physics/film/part-area';
import { count, metres } from '../../src/lib/engine/units/construct';
import { published } from './published';

export default published('matgeom', 'cylinder of radius 1 and height 1 with its ends', {
	of: ['area-bar'],
	unit: 'm²',
	read: 'example of the function in the library’s manual',
	within: { absolute: 5e-5, because: 'printed to four decimals' },
	rows: [
		{
			where: 'whole surface',
			expected: 12.5664,
			actual: () => partArea.bar.at({ diameter: metres(2), length: metres(1), sides: count(2) })
		}
	]
});
