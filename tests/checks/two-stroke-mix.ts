import { hardenerForBase } from '../../src/lib/engine/physics/mixing/hardener-for-base';
import { ratio } from '../../src/lib/engine/units/construct';
import type { CubicMetre } from '../../src/lib/engine/units/dimension';
import { unitOf } from '../../src/lib/engine/units/units';
import { published } from './published';

const ounces = (gallons: number, parts: number) => () =>
	unitOf('volume', 'US fl oz').fromSi(
		hardenerForBase.volume.at({
			base: unitOf('volume', 'US gal').toSi(gallons) as CubicMetre,
			ratio: ratio(parts)
		})
	);

export default published('two-stroke-mix', 'oil to fuel by volume, the same sum as hardener to base', {
	of: ['hardener-for-base-by-volume'],
	unit: 'US fl oz',
	read: 'page',
	within: { absolute: 0.005, because: 'printed to two decimals' },
	rows: [
		{ where: '1 gal at 50:1', expected: 2.56, actual: ounces(1, 50) },
		{ where: '1 gal at 40:1', expected: 3.2, actual: ounces(1, 40) },
		{ where: '12 gal at 50:1', expected: 30.72, actual: ounces(12, 50) }
	]
});
