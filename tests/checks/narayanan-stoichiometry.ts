import { vapourConcentrationAt } from '../../src/lib/engine/physics/exposure/vapour-concentration-at';
import { fraction, gramsPerMole, kelvin, pascal } from '../../src/lib/engine/units/construct';
import type { KilogramPerCubicMetre } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const read = 'example 8.1 as coded in an open textbook-companion project';
const air = { molarMass: gramsPerMole(58.048), gas: kelvin(280), barometer: pascal(105_000) };

export default [
	published('narayanan-stoichiometry', 'example 8.1: nitrogen saturated with acetone', {
		of: ['vapour-concentration-at'],
		unit: 'kg/m³',
		read,
		within: { absolute: 0.0004, because: 'worked with 22.4 m³/kmol' },
		rows: [
			{
				where: '13.25 of 105 kPa at 280 K',
				expected: 0.3307,
				actual: () => vapourConcentrationAt.mass.at({ ...air, share: fraction(13.25 / 105) })
			}
		]
	}),
	published('narayanan-stoichiometry', 'example 8.1 read backwards', {
		of: ['vapour-share-at'],
		unit: '%',
		read,
		within: { absolute: 0.012, because: 'worked with 22.4 m³/kmol' },
		rows: [
			{
				where: '0.3307 kg/m³',
				expected: 12.62,
				actual: () =>
					100 * vapourConcentrationAt.share.at({ ...air, concentration: 0.3307 as KilogramPerCubicMetre })
			}
		]
	})
];
