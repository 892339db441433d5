import { biot } from '../../src/lib/engine/physics/heat/biot';
import { fourier } from '../../src/lib/engine/physics/heat/fourier';
import { heatUpTime } from '../../src/lib/engine/physics/heat/heat-up-time';
import { thermalDiffusivity } from '../../src/lib/engine/physics/heat/thermal-diffusivity';
import { wallTemperatureAfter } from '../../src/lib/engine/physics/heat/wall-temperature-after';
import { wallTerms } from '../../src/lib/engine/physics/heat/wall-terms';
import { celsius, fraction, minutes } from '../../src/lib/engine/units/construct';
import type {
	Conductivity,
	HeatTransfer,
	KilogramPerCubicMetre,
	Metre,
	SpecificHeat
} from '../../src/lib/engine/units/dimension';
import { published } from './published';

/** The slab of its documentation: brass of 4 cm. */
const SLAB = {
	density: 8530 as KilogramPerCubicMetre,
	heat: 380 as SpecificHeat,
	conductivity: 110 as Conductivity,
	depth: 0.02 as Metre,
	heatTransfer: 120 as HeatTransfer
};
/** The lump of its documentation: aluminium alloy of 2 cm. */
const PLATE = {
	density: 2800 as KilogramPerCubicMetre,
	heat: 880 as SpecificHeat,
	depth: 0.01 as Metre,
	heatTransfer: 53 as HeatTransfer
};
const read = 'results printed in the library’s documentation';

export default [
	published('pychemengg', 'roots for a slab', {
		of: ['wall-terms'],
		unit: 'rad',
		read,
		within: { absolute: 1e-7, because: 'printed to eight decimals' },
		rows: [0.14717481, 3.1485222, 6.28665585, 9.42709237, 12.56810661].map((expected, index) => ({
			where: `root ${index + 1} at Bi 0.0218`,
			expected,
			actual: () => wallTerms.at({ biot: biot.at(SLAB) })[index]!.root
		}))
	}),
	published('pychemengg', 'temperature at the face of the slab', {
		of: ['wall-temperature-after'],
		unit: '°C',
		read,
		within: { absolute: 1e-6, because: 'the same series, summed by another program' },
		rows: [
			{
				where: 'after 7 min',
				expected: 279.76430920417204,
				actual: () =>
					wallTemperatureAfter.at({
						...SLAB,
						start: celsius(20),
						air: celsius(500),
						spent: minutes(7),
						place: fraction(1)
					}) - 273.15
			}
		]
	}),
	published('pychemengg', 'Biot and Fourier numbers', {
		of: ['biot', 'fourier', 'thermal-diffusivity'],
		unit: '',
		read,
		within: { relative: 1e-9, because: 'printed in full' },
		rows: [
			{ where: 'Bi of the slab', expected: 0.021818181818181816, actual: () => biot.at(SLAB) },
			{
				where: 'Bi of the plate',
				expected: 0.0029444444444444444,
				actual: () => biot.at({ ...PLATE, conductivity: 180 as Conductivity })
			},
			{
				where: 'Fo of the slab after 7 min',
				expected: 35.63275128031097,
				actual: () =>
					fourier.at({
						diffusivity: thermalDiffusivity.at(SLAB),
						spent: minutes(7),
						depth: SLAB.depth
					})
			}
		]
	}),
	published('pychemengg', 'one lump after a minute', {
		of: ['heat-up-time'],
		unit: 's',
		read,
		within: { absolute: 1e-6, because: 'printed in full' },
		rows: [
			{
				where: '700 °C to 617.06 °C in air of 15 °C',
				expected: 60,
				actual: () =>
					heatUpTime.at({
						...PLATE,
						start: celsius(700),
						air: celsius(15),
						target: celsius(617.0619799301729)
					})
			}
		]
	})
];
