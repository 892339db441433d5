import { purge } from '../../src/lib/engine/physics/solvent/purge';
import { cubicMetres, percent, ratio } from '../../src/lib/engine/units/construct';
import type { CubicMetrePerSecond } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const cleared = (changes: number, removed: number, expected: number) => ({
	where: `${changes} air changes an hour, ${removed} % removed`,
	expected,
	actual: () =>
		purge.time.at({
			space: cubicMetres(50),
			flow: ((50 * changes) / 3600) as CubicMetrePerSecond,
			mixing: ratio(1),
			remaining: percent(100 - removed)
		}) / 60
});

export default published('mmwr-1994-tb', 'Table S3-1: time to remove what is in the air', {
	of: ['purge-time'],
	unit: 'min',
	read: 'the table page',
	within: { absolute: 0.5, because: 'printed in whole minutes' },
	rows: [
		cleared(1, 99.9, 414),
		cleared(2, 99, 138),
		cleared(6, 90, 23),
		cleared(12, 99.9, 35),
		cleared(20, 99, 14)
	]
});
