import { biot } from '../../src/lib/engine/physics/heat/biot';
import { heatUpTime } from '../../src/lib/engine/physics/heat/heat-up-time';
import { celsius } from '../../src/lib/engine/units/construct';
import type {
	Conductivity,
	HeatTransfer,
	KilogramPerCubicMetre,
	Metre,
	SpecificHeat
} from '../../src/lib/engine/units/dimension';
import { published } from './published';

/** Volume over surface of a ball 5 cm across. */
const depth = (0.025 / 3) as Metre;
const heatTransfer = 10 as HeatTransfer;
const read = 'example 4-1 as worked in an open textbook-companion project';

export default [
	published('holman-heat', 'example 4-1: steel ball cooling in air', {
		of: ['heat-up-time'],
		unit: 's',
		read,
		within: { absolute: 1, because: 'printed in whole seconds' },
		rows: [
			{
				where: '450 °C to 150 °C in air of 100 °C',
				expected: 5818,
				actual: () =>
					heatUpTime.at({
						density: 7800 as KilogramPerCubicMetre,
						heat: 460 as SpecificHeat,
						depth,
						heatTransfer,
						start: celsius(450),
						air: celsius(100),
						target: celsius(150)
					})
			}
		]
	}),
	published('holman-heat', 'example 4-1: Biot number', {
		of: ['biot'],
		unit: '',
		read,
		within: { absolute: 5e-5, because: 'printed to four decimals' },
		rows: [
			{
				where: 'k = 35 W/(m·K)',
				expected: 0.0024,
				actual: () => biot.at({ heatTransfer, depth, conductivity: 35 as Conductivity })
			}
		]
	})
];
