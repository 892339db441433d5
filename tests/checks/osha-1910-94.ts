import { dilutionAir } from '../../src/lib/engine/physics/solvent/dilution-air';
import { vapourVolume } from '../../src/lib/engine/physics/solvent/vapour-volume';
import { fahrenheit, fraction, gramsPerMillilitre, percent } from '../../src/lib/engine/units/construct';
import type { CubicMetre, MolarMass } from '../../src/lib/engine/units/dimension';
import { unitOf } from '../../src/lib/engine/units/units';
import { published } from './published';

const cubicFeet = unitOf('volume', 'ft³');
const gallon = unitOf('volume', 'US gal').toSi(1) as CubicMetre;

const vapour = (solvent: string, density: number, grams: number, expected: number) => ({
	where: `Table G-11, ${solvent}`,
	expected,
	actual: () =>
		cubicFeet.fromSi(
			vapourVolume.at({
				liquid: gallon,
				density: gramsPerMillilitre(density),
				molarMass: (grams / 1e3) as MolarMass,
				gas: fahrenheit(70)
			})
		)
});

export default [
	published('osha-1910-94', '(c)(6)(ii)(a): air for a gallon of toluene, its example', {
		of: ['dilution-air'],
		unit: 'ft³',
		read: 'memory',
		within: { absolute: 0.5, because: 'printed in whole cubic feet' },
		rows: [
			{
				where: 'limit 1.4 %, 30.4 ft³ of vapour',
				expected: 8564,
				actual: () =>
					cubicFeet.fromSi(
						dilutionAir.at({
							vapour: cubicFeet.toSi(30.4) as CubicMetre,
							limit: percent(1.4),
							share: fraction(0.25)
						})
					)
			}
		]
	}),
	published('osha-1910-94', 'Table G-11: vapour of one gallon at 70 °F', {
		of: ['vapour-volume'],
		unit: 'ft³',
		read: 'memory',
		within: { relative: 0.015, because: 'the table uses rounded densities' },
		rows: [
			vapour('acetone', 0.791, 58.08, 44.0),
			vapour('toluene', 0.867, 92.14, 30.4),
			vapour('xylene', 0.864, 106.17, 26.4),
			vapour('n-butyl acetate', 0.882, 116.16, 24.8)
		]
	})
];
