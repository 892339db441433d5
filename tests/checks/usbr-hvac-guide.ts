import { purge } from '../../src/lib/engine/physics/solvent/purge';
import { fraction, minutes, ratio } from '../../src/lib/engine/units/construct';
import type { CubicMetre, CubicMetrePerSecond } from '../../src/lib/engine/units/dimension';
import { unitOf } from '../../src/lib/engine/units/units';
import { published } from './published';

/** Two changes of air a minute; one fifth of them mixes. */
const ROOM = {
	space: unitOf('volume', 'ft³').toSi(1000) as CubicMetre,
	flow: unitOf('flow', 'cfm').toSi(2000) as CubicMetrePerSecond,
	mixing: ratio(5)
};
const read = 'page 106 with its example';

export default [
	published('usbr-hvac-guide', 'ventilating combustible gas from 20 % to its limit of 1.4 %', {
		of: ['purge-time'],
		unit: 'min',
		read,
		within: { absolute: 0.005, because: 'printed to two decimals' },
		rows: [
			{
				where: 'two air changes a minute',
				expected: 6.65,
				actual: () => purge.time.at({ ...ROOM, remaining: fraction(1.4 / 20) }) / 60
			}
		]
	}),
	published('usbr-hvac-guide', 'the same example read backwards', {
		of: ['purge-remaining'],
		unit: '%',
		read,
		within: { relative: 0.003, because: 'the time is printed to three digits' },
		rows: [
			{
				where: 'of 20 % after 6.65 min',
				expected: 1.4,
				actual: () => 20 * purge.remaining.at({ ...ROOM, spent: minutes(6.65) })
			}
		]
	})
];
