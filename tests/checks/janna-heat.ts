import { wallTemperatureAfter } from '../../src/lib/engine/physics/heat/wall-temperature-after';
import { thermal } from '../../src/lib/engine/substrates/thermal';
import { celsius, fraction, hours } from '../../src/lib/engine/units/construct';
import type {
	Conductivity,
	HeatTransfer,
	KilogramPerCubicMetre,
	Metre,
	SpecificHeat
} from '../../src/lib/engine/units/dimension';
import { published } from './published';

/** Slab of 24 cm to its middle, Bi 5.76. */
const at = (place: number) =>
	wallTemperatureAfter.at({
		density: 550 as KilogramPerCubicMetre,
		heat: 890 as SpecificHeat,
		conductivity: 1.25 as Conductivity,
		depth: 0.24 as Metre,
		heatTransfer: 30 as HeatTransfer,
		start: celsius(50),
		air: celsius(600),
		spent: hours(2.5),
		place: fraction(place)
	});

export default [
	published('janna-heat', 'example 4.3: temperature profile of a slab after 2.5 h', {
		of: ['wall-temperature-after'],
		unit: '',
		read: 'example as worked in an open textbook-companion project',
		within: { absolute: 0.03, because: 'read off a chart to two decimals' },
		rows: (
			[
				[0.2, 0.97],
				[0.4, 0.86],
				[0.6, 0.68],
				[0.8, 0.48],
				[0.9, 0.36],
				[1, 0.24]
			] as const
		).map(([place, expected]) => ({
			where: `x/L ${place}, difference over that of the centre`,
			expected,
			actual: () => (at(place) - celsius(600)) / (at(0) - celsius(600))
		}))
	}),
	published('janna-heat', 'Table B1: aluminium', {
		of: ['materials'],
		unit: 'SI',
		read: 'as used in example 4.2, worked in an open textbook-companion project',
		within: { relative: 0.01, because: 'the metal itself, of which the alloy is nearly all' },
		rows: [
			{ where: 'density', expected: 2702, actual: () => thermal('aluminium-6061').density.value },
			{ where: 'specific heat', expected: 896, actual: () => thermal('aluminium-6061').heat.value }
		]
	})
];
