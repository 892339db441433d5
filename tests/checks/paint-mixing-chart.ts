import { hardenerForBase } from '../../src/lib/engine/physics/mixing/hardener-for-base';
import { mixSplit } from '../../src/lib/engine/physics/mixing/mix-split';
import { ratio } from '../../src/lib/engine/units/construct';
import type { CubicMetre } from '../../src/lib/engine/units/dimension';
import { unitOf } from '../../src/lib/engine/units/units';
import { published } from './published';

const ounce = unitOf('volume', 'US fl oz');
const ounces = (many: number) => ounce.toSi(many) as CubicMetre;
const read = 'chart';
const within = { absolute: 0.05, because: 'printed to one decimal' };
const table = 'chart for 32 oz of paint';

export default [
	published('paint-mixing-chart', 'hardener to 32 oz of paint', {
		of: ['hardener-for-base-by-volume'],
		table,
		unit: 'US fl oz',
		read,
		within,
		rows: (
			[
				[2, 16],
				[3, 10.7],
				[4, 8]
			] as const
		).map(([parts, expected]) => ({
			where: `${parts}:1`,
			expected,
			actual: () => ounce.fromSi(hardenerForBase.volume.at({ base: ounces(32), ratio: ratio(parts) }))
		}))
	}),
	published('paint-mixing-chart', 'the whole batches parted again', {
		of: ['mix-base-by-volume', 'mix-hardener-by-volume'],
		table,
		unit: 'US fl oz',
		read,
		within,
		rows: [
			{
				where: 'base in 42.7 oz at 3:1',
				expected: 32,
				actual: () => ounce.fromSi(mixSplit.volume.base.at({ batch: ounces(42.7), ratio: ratio(3) }))
			},
			{
				where: 'hardener in 40 oz at 4:1',
				expected: 8,
				actual: () => ounce.fromSi(mixSplit.volume.hardener.at({ batch: ounces(40), ratio: ratio(4) }))
			}
		]
	})
];
