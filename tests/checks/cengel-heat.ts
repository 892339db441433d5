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

/** Volume over surface of a bead 1 mm across. */
const depth = (0.001 / 6) as Metre;
const heatTransfer = 210 as HeatTransfer;
const read = 'example 4-1 as worked in an open textbook-companion project';

export default [
	published('cengel-heat', 'example 4-1: thermocouple bead', {
		of: ['heat-up-time'],
		unit: 's',
		read,
		within: { absolute: 0.1, because: 'the text rounds 9.94 s to 10 s' },
		rows: [
			{
				where: '99 % of a step of 100 K',
				expected: 10,
				actual: () =>
					heatUpTime.at({
						density: 8500 as KilogramPerCubicMetre,
						heat: 320 as SpecificHeat,
						depth,
						heatTransfer,
						start: celsius(0),
						air: celsius(100),
						target: celsius(99)
					})
			}
		]
	}),
	published('cengel-heat', 'example 4-1: Biot number', {
		of: ['biot'],
		unit: '',
		read,
		within: { absolute: 5e-5, because: 'printed to three decimals' },
		rows: [
			{
				where: 'k = 35 W/(m·K)',
				expected: 0.001,
				actual: () => biot.at({ heatTransfer, depth, conductivity: 35 as Conductivity })
			}
		]
	})
];
