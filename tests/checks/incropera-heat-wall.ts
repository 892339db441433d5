import { fourier } from '../../src/lib/engine/physics/heat/fourier';
import { heatModel } from '../../src/lib/engine/physics/heat/heat-model';
import { heatUpTime } from '../../src/lib/engine/physics/heat/heat-up-time';
import { wallTemperatureAfter } from '../../src/lib/engine/physics/heat/wall-temperature-after';
import { wallTerms } from '../../src/lib/engine/physics/heat/wall-terms';
import { celsius, fraction, minutes } from '../../src/lib/engine/units/construct';
import type {
	Conductivity,
	Diffusivity,
	HeatTransfer,
	KilogramPerCubicMetre,
	Metre,
	SpecificHeat
} from '../../src/lib/engine/units/dimension';
import { published } from './published';

const first = (biot: number) => wallTerms.at({ biot: fraction(biot) })[0]!;
const table = [
	[0.1, 0.3111, 1.0161],
	[1, 0.8603, 1.1191],
	[10, 1.4289, 1.262]
] as const;

/** Pipe of AISI 1010, 40 mm thick: insulated outside, so all of it counts. */
const PIPE = {
	density: 7832 as KilogramPerCubicMetre,
	heat: 434 as SpecificHeat,
	conductivity: 63.9 as Conductivity,
	depth: 0.04 as Metre,
	heatTransfer: 500 as HeatTransfer
};
const pipeAt = (place: number) => () =>
	wallTemperatureAfter.at({
		...PIPE,
		start: celsius(-20),
		air: celsius(60),
		spent: minutes(8),
		place: fraction(place)
	}) - 273.15;
const read = (number: string) => `example ${number} as worked in an open textbook-companion project`;

export default [
	published('incropera-heat', 'Table 5.1: first root for the plane wall', {
		of: ['wall-terms'],
		table: 'Table 5.1',
		unit: 'rad',
		read: 'rows of the table as quoted in an open-source test suite',
		within: { absolute: 5e-5, because: 'printed to four decimals' },
		rows: table.map(([biot, root]) => ({
			where: `Bi ${biot}`,
			expected: root,
			actual: () => first(biot).root
		}))
	}),
	published('incropera-heat', 'Table 5.1: first coefficient for the plane wall', {
		of: ['wall-terms'],
		table: 'Table 5.1',
		unit: '',
		read: 'rows of the table as quoted in an open-source test suite',
		within: { absolute: 5e-5, because: 'printed to four decimals' },
		rows: table.map(([biot, , weight]) => ({
			where: `Bi ${biot}`,
			expected: weight,
			actual: () => first(biot).weight
		}))
	}),
	published('incropera-heat', 'example 5.4: hot oil in a cold pipe', {
		of: ['wall-temperature-after'],
		unit: '°C',
		read: read('5.4'),
		within: { absolute: 0.2, because: 'root and coefficient rounded to three digits' },
		rows: [
			{ where: 'outside after 8 min', expected: 42.92, actual: pipeAt(0) },
			// from the heat flux of 7362.49 W/m² the example prints for the inside
			{ where: 'inside after 8 min', expected: 60 - 7362.49 / 500, actual: pipeAt(1) }
		]
	}),
	published('incropera-heat', 'example 5.4: root and coefficient at Bi 0.313', {
		of: ['wall-terms'],
		unit: '',
		read: read('5.4'),
		within: { absolute: 0.003, because: 'interpolated in the table' },
		rows: [
			{ where: 'ζ', expected: 0.531, actual: () => first(0.313).root },
			{ where: 'C', expected: 1.047, actual: () => first(0.313).weight }
		]
	}),
	published('incropera-heat', 'example 5.4: Fourier number', {
		of: ['fourier'],
		unit: '',
		read: read('5.4'),
		within: { absolute: 0.005, because: 'printed to two decimals' },
		rows: [
			{
				where: '8 min, 40 mm',
				expected: 5.64,
				actual: () =>
					fourier.at({ diffusivity: 18.8e-6 as Diffusivity, spent: minutes(8), depth: PIPE.depth })
			}
		]
	}),
	published('incropera-heat', 'example 5.4: which model', {
		of: ['heat-model'],
		unit: '',
		read: read('5.4'),
		within: { absolute: 0, because: 'the text goes on with the one-term solution' },
		rows: [{ where: 'pipe wall, Bi 0.313', expected: 'conduction', actual: () => heatModel.at(PIPE).model }]
	}),
	published('incropera-heat', 'example 5.1: thermocouple bead in a gas stream', {
		of: ['heat-up-time'],
		unit: 's',
		read: read('5.1'),
		within: { absolute: 0.02, because: 'worked with ln 10 rounded to 2.30' },
		rows: [
			{
				where: '25 °C to 199 °C in gas of 200 °C',
				expected: 5.16,
				actual: () =>
					heatUpTime.at({
						density: 8500 as KilogramPerCubicMetre,
						heat: 400 as SpecificHeat,
						depth: (7.06e-4 / 6) as Metre,
						heatTransfer: 400 as HeatTransfer,
						start: celsius(25),
						air: celsius(200),
						target: celsius(199)
					})
			}
		]
	})
];
