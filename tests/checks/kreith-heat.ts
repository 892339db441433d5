import { heatUpTime } from '../../src/lib/engine/physics/heat/heat-up-time';
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

/** Furnace wall of 0.5 m with its outside insulated, in gas of 900 °C. */
const at = (place: number) =>
	wallTemperatureAfter.at({
		density: 500 as KilogramPerCubicMetre,
		heat: 837 as SpecificHeat,
		conductivity: 1.25 as Conductivity,
		depth: 0.5 as Metre,
		heatTransfer: 25 as HeatTransfer,
		start: celsius(60),
		air: celsius(900),
		spent: seconds(16.2 * 3600),
		place: fraction(place)
	});

/** Copper wire of 1 mm, so a quarter of that is volume over surface. */
const rate = (heatTransfer: number) => () => {
	const fallen = heatUpTime.at({
		density: 8930 as KilogramPerCubicMetre,
		heat: 383 as SpecificHeat,
		depth: 0.00025 as Metre,
		heatTransfer: heatTransfer as HeatTransfer,
		start: celsius(150),
		air: celsius(40),
		target: celsius(40 + 110 / Math.E)
	});
	return 1 / fallen;
};

export default [
	published('kreith-heat', 'example 2.13: temperatures in a furnace wall after 16 h', {
		of: ['wall-temperature-after'],
		unit: '',
		read: 'example as worked in an open textbook-companion project',
		within: { absolute: 0.02, because: 'read off a chart to two decimals' },
		rows: (
			[
				[1, 0.13],
				[0.8, 0.41],
				[0.6, 0.64],
				[0.4, 0.83],
				[0.2, 0.96]
			] as const
		).map(([place, expected]) => ({
			where: `x/L ${place}, difference over that at the insulated face`,
			expected,
			actual: () => (at(place) - celsius(900)) / (at(0) - celsius(900))
		}))
	}),
	published('kreith-heat', 'example 2.10: hot copper wire, what multiplies the time', {
		of: ['heat-up-time'],
		unit: '1/s',
		read: 'example as worked in an open textbook-companion project',
		within: { absolute: 5e-5, because: 'printed to four decimals' },
		rows: [
			{ where: 'in water, h = 80 W/(m²·K)', expected: 0.0936, actual: rate(80) },
			{ where: 'in air, h = 10 W/(m²·K)', expected: 0.0117, actual: rate(10) }
		]
	})
];
