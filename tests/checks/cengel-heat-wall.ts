import { rackHeatUp } from '../../src/lib/engine/physics/heat/rack-heat-up';
import { thermalDiffusivity } from '../../src/lib/engine/physics/heat/thermal-diffusivity';
import { wallHeatUp } from '../../src/lib/engine/physics/heat/wall-heat-up';
import { wallTemperatureAfter } from '../../src/lib/engine/physics/heat/wall-temperature-after';
import { celsius, fraction, minutes, seconds } from '../../src/lib/engine/units/construct';
import type {
	Conductivity,
	HeatTransfer,
	KilogramPerCubicMetre,
	Metre,
	SpecificHeat
} from '../../src/lib/engine/units/dimension';
import { published } from './published';

/** Brass plate of 4 cm, heated from both faces. */
const BRASS = {
	density: 8530 as KilogramPerCubicMetre,
	heat: 380 as SpecificHeat,
	conductivity: 110 as Conductivity,
	depth: 0.02 as Metre,
	heatTransfer: 120 as HeatTransfer
};
const OVEN = { start: celsius(20), air: celsius(500) };
const STAINLESS = {
	density: 7900 as KilogramPerCubicMetre,
	heat: 477 as SpecificHeat,
	conductivity: 14.9 as Conductivity
};

export default [
	published('cengel-heat', 'example 4-4: brass plates leaving an oven, by the charts', {
		of: ['wall-temperature-after'],
		unit: '°C',
		read: 'text of the example',
		within: { absolute: 5, because: 'the text itself calls the reading error a few percent' },
		rows: [
			{
				where: 'surface after 7 min',
				expected: 282,
				actual: () =>
					wallTemperatureAfter.at({ ...BRASS, ...OVEN, spent: minutes(7), place: fraction(1) }) - 273.15
			}
		]
	}),
	published('cengel-heat', 'example 4-4: the same plates as one lump', {
		of: ['wall-heat-up', 'rack-heat-up'],
		unit: 's',
		read: 'text of the example',
		within: { absolute: 2, because: 'the temperature is printed in whole degrees' },
		rows: [
			{
				where: 'time to 279 °C',
				expected: 420,
				actual: () => wallHeatUp.at({ ...BRASS, ...OVEN, target: celsius(279) })
			},
			{
				where: 'time to 279 °C, as the only part of a rack',
				expected: 420,
				actual: () =>
					rackHeatUp.at({
						densities: [BRASS.density],
						heats: [BRASS.heat],
						conductivities: [BRASS.conductivity],
						depths: [BRASS.depth],
						limits: [celsius(600)],
						heatTransfer: BRASS.heatTransfer,
						...OVEN,
						target: celsius(279),
						top: celsius(600),
						hold: seconds(0)
					}).soaked
			}
		]
	}),
	published('cengel-heat', 'Table A-3: thermal diffusivity', {
		of: ['thermal-diffusivity'],
		unit: '10⁻⁶ m²/s',
		read: 'as stated in examples 4-4 and 4-5',
		within: { absolute: 0.05, because: 'printed to three digits' },
		rows: [
			{ where: 'brass', expected: 33.9, actual: () => thermalDiffusivity.at(BRASS) * 1e6 },
			{
				where: 'stainless steel 304',
				expected: 3.95,
				within: 0.005,
				actual: () => thermalDiffusivity.at(STAINLESS) * 1e6
			}
		]
	})
];
