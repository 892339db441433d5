import { partTemperatureAfter } from '../../src/lib/engine/physics/heat/part-temperature-after';
import { radiantHeatUpTime } from '../../src/lib/engine/physics/heat/radiant-heat-up-time';
import { radiationCoefficient } from '../../src/lib/engine/physics/heat/radiation-coefficient';
import { celsius, fraction, seconds } from '../../src/lib/engine/units/construct';
import type {
	HeatTransfer,
	KilogramPerCubicMetre,
	Metre,
	SpecificHeat
} from '../../src/lib/engine/units/dimension';
import { published } from './published';

/** 3 mm aluminium panel coated on both sides: half its thickness counts. */
const PANEL = {
	density: 2770 as KilogramPerCubicMetre,
	heat: 875 as SpecificHeat,
	depth: 0.0015 as Metre,
	emissivity: fraction(0.8)
};
const OVEN = { ...PANEL, heatTransfer: 40 as HeatTransfer, start: celsius(25), air: celsius(175) };
const CHAMBER = { ...PANEL, heatTransfer: 10 as HeatTransfer, air: celsius(25) };

const read = 'example as worked in an open textbook-companion project';
const toCure = () => radiantHeatUpTime.at({ ...OVEN, target: celsius(150) });
const toTouch = () => {
	const cured = seconds(toCure() + 300);
	const start = partTemperatureAfter.at({ ...OVEN, spent: cured });
	return cured + radiantHeatUpTime.at({ ...CHAMBER, start, target: celsius(37) });
};
const byRadiation = (walls: number) => () =>
	radiationCoefficient.at({ emissivity: fraction(0.8), part: celsius(150), walls: celsius(walls) });

export default [
	published('incropera-heat', 'example 5.3: curing a coated panel', {
		of: ['radiant-heat-up-time', 'part-temperature-after'],
		unit: 's',
		read,
		within: {
			absolute: 1,
			because:
				'the worked solution steps through time and prints whole seconds; over the long cooling it and the text themselves are 2 s apart'
		},
		rows: [
			{ where: 'panel reaches 150 °C', expected: 123, actual: toCure },
			{ where: '300 s of cure later', expected: 423, actual: () => toCure() + 300 },
			{ where: 'cooled to 37 °C', expected: 987, within: 3, actual: toTouch }
		]
	}),
	published('incropera-heat', 'eq. 1.9 in example 5.3: radiation coefficient', {
		of: ['radiation-coefficient'],
		unit: 'W/(m²·K)',
		read,
		within: { absolute: 0.05, because: 'printed to one decimal' },
		rows: [
			{ where: 'oven at 175 °C', expected: 15.0, actual: byRadiation(175) },
			{ where: 'chamber at 25 °C', expected: 8.8, actual: byRadiation(25) }
		]
	})
];
