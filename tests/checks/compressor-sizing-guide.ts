import { compressorDelivery } from '../../src/lib/engine/physics/air/compressor-delivery';
import { deliveryNeeded } from '../../src/lib/engine/physics/air/delivery-needed';
import { fraction, percent } from '../../src/lib/engine/units/construct';
import type { CubicMetrePerSecond } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const CFM = 0.3048 ** 3 / 60;
const flow = (cfm: number) => (cfm * CFM) as CubicMetrePerSecond;

/** Two sanders, a spray gun, two impact wrenches, and blow guns counted as always on. */
const shop = {
	demand: [8, 8, 12, 4, 4, 2].map(flow),
	duty: [0.6, 0.6, 0.8, 0.25, 0.25, 1].map(fraction),
	leak: percent(0)
};

export default published('compressor-sizing-guide', 'example: a body shop', {
	of: ['compressor-delivery', 'delivery-needed'],
	unit: 'cfm',
	read: 'worked example',
	within: { absolute: 0.05, because: 'printed to one decimal' },
	rows: [
		{
			where: 'spray gun: 12 cfm at 80 %',
			expected: 9.6,
			actual: () =>
				deliveryNeeded.at({
					demand: flow(12),
					duty: percent(80),
					leak: percent(0),
					reserve: percent(0)
				}) / CFM
		},
		{
			where: 'total',
			expected: 23.2,
			actual: () => compressorDelivery.at({ ...shop, reserve: percent(0) }) / CFM
		},
		{
			where: 'total with a safety factor of 1.25',
			expected: 29,
			actual: () => compressorDelivery.at({ ...shop, reserve: percent(25) }) / CFM
		}
	]
});
