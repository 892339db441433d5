import { guardedLimits } from '../../src/lib/engine/physics/readings/guarded-limits';
import { judgeReading } from '../../src/lib/engine/physics/readings/judge-reading';
import { micrometres } from '../../src/lib/engine/units/construct';
import { published } from './published';

/** An upper tolerance limit of 30 and a guard band as wide as an uncertainty of 2; nothing below is in question. */
const [TL, W] = [30, 2];
const zone = (measured: number) => () =>
	judgeReading.at({
		measured: micrometres(measured),
		min: micrometres(0),
		max: micrometres(TL),
		uncertainty: micrometres(W)
	}).zone;

export default [
	published('ilac-g8', '4.2.3: the four statements about an upper limit', {
		of: ['judge-reading'],
		unit: '',
		read: 'page 10 of G8:09/2019; its two conditional statements are one zone here',
		within: { absolute: 0, because: 'named' },
		rows: [
			{ where: 'pass: below TL − w', expected: 'inside', actual: zone(TL - W - 0.5) },
			{ where: 'conditional pass: TL − w to TL', expected: 'measure-again', actual: zone(TL - W + 0.5) },
			{ where: 'conditional fail: TL to TL + w', expected: 'measure-again', actual: zone(TL + W - 0.5) },
			{ where: 'fail: above TL + w', expected: 'outside', actual: zone(TL + W + 0.5) }
		]
	}),
	published('ilac-g8', '4.1: acceptance limit, AL = TL − w', {
		of: ['guarded-limits'],
		unit: 'µm',
		read: 'page 8 of G8:09/2019',
		within: { absolute: 1e-9, because: 'a difference' },
		rows: [
			{
				where: `TL = ${TL}, w = ${W}`,
				expected: TL - W,
				actual: () =>
					guardedLimits.at({ min: micrometres(10), max: micrometres(TL), uncertainty: micrometres(W) })
						.inside!.max * 1e6
			}
		]
	})
];
