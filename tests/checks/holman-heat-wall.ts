import { heatModel } from '../../src/lib/engine/physics/heat/heat-model';
import { wallTemperatureAfter } from '../../src/lib/engine/physics/heat/wall-temperature-after';
import { celsius, fraction, seconds } from '../../src/lib/engine/units/construct';
import type {
	Conductivity,
	HeatTransfer,
	KilogramPerCubicMetre,
	Metre,
	SpecificHeat
} from '../../src/lib/engine/units/dimension';
import { published } from './published';

/** Aluminium with the rounded diffusivity of the examples, 8.4·10⁻⁵ m²/s. */
const ALUMINIUM = {
	density: 2700 as KilogramPerCubicMetre,
	heat: (215 / (2700 * 8.4e-5)) as SpecificHeat,
	conductivity: 215 as Conductivity,
	heatTransfer: 525 as HeatTransfer
};
const after = (half: number, place: number) =>
	wallTemperatureAfter.at({
		...ALUMINIUM,
		depth: half as Metre,
		start: celsius(200),
		air: celsius(70),
		spent: seconds(60),
		place: fraction(place)
	});
/** Share of the first difference left. */
const left = (half: number, place: number) => (after(half, place) - celsius(70)) / 130;
const read = (number: string) => `example ${number} as worked in an open textbook-companion project`;

export default [
	published('holman-heat', 'example 4-6: aluminium plate of 5 cm in cooler air for a minute', {
		of: ['wall-temperature-after'],
		unit: '',
		read: read('4-6'),
		within: { relative: 0.04, because: 'read off the Heisler charts' },
		rows: [
			{ where: 'centre plane, share left', expected: 0.61, actual: () => left(0.025, 0) },
			{
				where: 'half-way to the face, over the centre',
				expected: 0.98,
				actual: () => left(0.025, 0.5) / left(0.025, 0)
			}
		]
	}),
	published('holman-heat', 'example 4-6: temperature half-way to the face', {
		of: ['wall-temperature-after'],
		unit: '°C',
		read: read('4-6'),
		within: { absolute: 3, because: 'follows from the charts, which are read to a few hundredths' },
		rows: [{ where: '12.5 mm deep', expected: 147.7, actual: () => after(0.025, 0.5) - 273.15 }]
	}),
	published('holman-heat', 'example 4-9: plate of 10 cm that a short cylinder is cut from', {
		of: ['wall-temperature-after'],
		unit: '',
		read: read('4-9'),
		within: { relative: 0.08, because: 'read off the Heisler charts' },
		rows: [
			{ where: 'centre plane, share left', expected: 0.75, actual: () => left(0.05, 0) },
			{
				where: '6.25 mm below the face, over the centre',
				expected: 0.95,
				actual: () => left(0.05, 0.875) / left(0.05, 0)
			}
		]
	}),
	published('holman-heat', 'example 4-1: which model', {
		of: ['heat-model'],
		unit: '',
		read: read('4-1'),
		within: { absolute: 0, because: 'the text goes on with the lumped solution' },
		rows: [
			{
				where: 'steel ball, Bi 0.0024',
				expected: 'lumped',
				actual: () =>
					heatModel.at({
						heatTransfer: 10 as HeatTransfer,
						depth: (0.025 / 3) as Metre,
						conductivity: 35 as Conductivity
					}).model
			}
		]
	})
];
