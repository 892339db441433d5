import { coreHeatUpTime } from '../../src/lib/engine/physics/heat/core-heat-up-time';
import { heatModel } from '../../src/lib/engine/physics/heat/heat-model';
import { heatUpTime } from '../../src/lib/engine/physics/heat/heat-up-time';
import { wallHeatUp } from '../../src/lib/engine/physics/heat/wall-heat-up';
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

const read = (number: string) => `example ${number} as worked in an open textbook-companion project`;
const E_TIMES_CLOSER = { start: celsius(0), air: celsius(100), target: celsius(100 - 100 / Math.E) };
const timeConstant = (density: number, heat: number, depth: number, heatTransfer: number) => () =>
	heatUpTime.at({
		density: density as KilogramPerCubicMetre,
		heat: heat as SpecificHeat,
		depth: depth as Metre,
		heatTransfer: heatTransfer as HeatTransfer,
		...E_TIMES_CLOSER
	});

/** A metal of given conductivity and diffusivity. */
const metal = (conductivity: number, diffusivity: number) => ({
	density: 5000 as KilogramPerCubicMetre,
	heat: (conductivity / (5000 * diffusivity)) as SpecificHeat,
	conductivity: conductivity as Conductivity
});
const centre = (of: ReturnType<typeof metal>, depth: number, heatTransfer: number, spent: number) => () => {
	const after = wallTemperatureAfter.at({
		...of,
		depth: depth as Metre,
		heatTransfer: heatTransfer as HeatTransfer,
		start: celsius(0),
		air: celsius(100),
		spent: seconds(spent),
		place: fraction(0)
	});
	return (celsius(100) - after) / 100;
};
const [BAR, BEAM] = [metal(198, 8.1e-5), metal(73, 2.034e-5)];

/** Brick wall of 30 cm heated from both faces, Bi 5. */
const BRICK = {
	density: 1200 as KilogramPerCubicMetre,
	heat: 1000 as SpecificHeat,
	conductivity: 0.6 as Conductivity,
	depth: 0.15 as Metre,
	heatTransfer: 20 as HeatTransfer,
	start: celsius(30),
	air: celsius(780),
	target: celsius(480)
};

export default [
	published('som-heat', 'examples 4.2 and 4.4: time constants', {
		of: ['heat-up-time'],
		unit: 's',
		read: read('4.2 and 4.4'),
		within: { relative: 1e-6, because: 'exact' },
		rows: [
			{
				where: 'thermocouple bead of 1.5 mm',
				expected: 8,
				actual: timeConstant(8000, 300, 0.00075 / 3, 75)
			},
			{
				where: 'glass of milk in cold water',
				expected: 472.5,
				actual: timeConstant(900, 4200, 0.0125, 100)
			}
		]
	}),
	published('som-heat', 'example 4.5: a brick wall in hot gas on both sides', {
		of: ['core-heat-up-time', 'wall-heat-up'],
		unit: 'Fo',
		read: read('4.5'),
		within: { relative: 0.1, because: 'Fourier number read off a chart to one digit' },
		rows: [coreHeatUpTime, wallHeatUp].map(({ id, at }) => ({
			where: `middle at 480 °C, ${id}`,
			expected: 0.6,
			actual: () => (at(BRICK) * 5e-7) / 0.15 ** 2
		}))
	}),
	published('som-heat', 'example 4.9: the two plates an aluminium bar is cut from', {
		of: ['wall-temperature-after'],
		unit: '',
		read: read('4.9'),
		within: { relative: 0.02, because: 'read off a chart to two digits' },
		rows: [
			{ where: '18 cm, Bi 0.5', expected: 0.7, actual: centre(BAR, 0.09, 1100, 100) },
			{ where: '10.4 cm, Bi 0.29', expected: 0.47, actual: centre(BAR, 0.052, 1100, 100) }
		]
	}),
	published('som-heat', 'example 4.10: the two plates an iron beam is cut from', {
		of: ['wall-temperature-after'],
		unit: '',
		read: read('4.10'),
		within: { relative: 0.05, because: 'read off a chart where its lines lie close' },
		rows: [
			{ where: '30 cm after 15 min', expected: 0.85, actual: centre(BEAM, 0.15, 100, 900) },
			{ where: '20 cm after 15 min', expected: 0.8, actual: centre(BEAM, 0.1, 100, 900) }
		]
	}),
	published('som-heat', 'example 4.1: which model', {
		of: ['heat-model'],
		unit: '',
		read: read('4.1'),
		within: { absolute: 0, because: 'the example says it is not to be treated as one lump' },
		rows: [
			{
				where: 'apple of 10 cm in air',
				expected: 'conduction',
				actual: () =>
					heatModel.at({
						heatTransfer: 10 as HeatTransfer,
						depth: (0.05 / 3) as Metre,
						conductivity: 0.6 as Conductivity
					}).model
			}
		]
	})
];
