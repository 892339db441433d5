import { vapourConcentration } from '../../src/lib/engine/physics/exposure/vapour-concentration';
import { vapourConcentrationAt } from '../../src/lib/engine/physics/exposure/vapour-concentration-at';
import { fraction, gramsPerMole, kelvin, pascal } from '../../src/lib/engine/units/construct';
import type { KilogramPerCubicMetre } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const read = 'examples in the documentation and the test suite of the library';
const vapour = { molarMass: gramsPerMole(40), gas: kelvin(298.15), barometer: pascal(101_325) };

export default [
	published('chemicals', 'one ppm of a vapour of 40 g/mol by weight', {
		of: ['vapour-concentration', 'vapour-concentration-at'],
		unit: 'mg/m³',
		read,
		within: { relative: 1e-5, because: 'the library held the gas constant of 2010 when it was printed' },
		rows: [
			{
				where: 'as limits are stated',
				expected: 1.6349617809430446,
				actual: () => 1e6 * vapourConcentration.at({ share: fraction(1e-6), molarMass: vapour.molarMass })
			},
			{
				where: 'in air of 25 °C',
				expected: 1.6349617809430446,
				actual: () => 1e6 * vapourConcentrationAt.mass.at({ ...vapour, share: fraction(1e-6) })
			}
		]
	}),
	published('chemicals', 'a vapour of 40 g/mol by share', {
		of: ['vapour-share-at'],
		unit: 'ppm',
		read,
		within: { relative: 1e-5, because: 'the library held the gas constant of 2010 when it was printed' },
		rows: [
			{
				where: '1.635 mg/m³',
				expected: 1.0000233761164334,
				actual: () =>
					1e6 *
					vapourConcentrationAt.share.at({
						...vapour,
						concentration: 1.635e-6 as KilogramPerCubicMetre
					})
			}
		]
	})
];
