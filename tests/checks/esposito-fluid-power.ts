import { airLineDrop } from '../../src/lib/engine/physics/air/air-line-drop';
import { compressorPower } from '../../src/lib/engine/physics/air/compressor-power';
import { freeAir } from '../../src/lib/engine/physics/air/free-air';
import { fahrenheit, metres, psi } from '../../src/lib/engine/units/construct';
import type { CubicMetrePerSecond, KilogramPerSecond } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const CFM = 0.3048 ** 3 / 60;
const HORSEPOWER = 745.7;
/** Gas constant of air, 53.3 ft·lbf/(lb·°R), in SI. */
const R = 53.3 * 0.3048 * 9.80665 * 1.8;
const read = 'example as worked and executed in an open textbook-companion project';

/** 30 cfm from a receiver at 125 psig and 90 °F. */
const drawn = ((30 * CFM * psi(139.7)) / (R * fahrenheit(90))) as KilogramPerSecond;

export default [
	published('esposito-fluid-power', 'example 13-6: free air for 30 cfm from a receiver', {
		of: ['free-air'],
		unit: 'cfm',
		read,
		within: {
			absolute: 1,
			because: 'printed in whole cfm, with 460 for 459.67 and 53.3 for the gas constant'
		},
		rows: [
			{
				where: '125 psig and 90 °F, taken in at 14.7 psia and 70 °F',
				expected: 275,
				actual: () => freeAir.at({ flow: drawn, temperature: fahrenheit(70), pressure: psi(14.7) }) / CFM
			}
		]
	}),
	published('esposito-fluid-power', 'example 13-8: power of a compressor of 75 % efficiency', {
		of: ['compressor-power'],
		unit: 'hp',
		read,
		within: { relative: 0.1, because: 'a rule of thumb beside a calculation for one compressor' },
		rows: [
			{
				where: '100 cfm to 100 psig',
				expected: 24,
				actual: () => compressorPower.at({ air: (100 * CFM) as CubicMetrePerSecond }) / HORSEPOWER
			}
		]
	}),
	published('esposito-fluid-power', 'example 14-1: pressure lost in 250 ft of pipe', {
		of: ['air-line-drop'],
		unit: 'psi',
		read,
		within: { absolute: 0.01, because: 'printed to two decimals' },
		rows: [
			{
				where: '100 cfm at 150 psig through a bore of 1.049 in, to the 5.31th 1.2892',
				expected: 4.93,
				actual: () =>
					airLineDrop.at({
						length: metres(250 * 0.3048),
						air: (100 * CFM) as CubicMetrePerSecond,
						gauge: psi(150),
						bore: metres(1.2892 ** (1 / 5.31) * 0.0254)
					}) / psi(1)
			}
		]
	})
];
