import { maximumUse } from '../../src/lib/engine/physics/exposure/maximum-use';
import { smallestProtection } from '../../src/lib/engine/physics/exposure/smallest-protection';
import { vapourConcentration } from '../../src/lib/engine/physics/exposure/vapour-concentration';
import { count, fraction, gramsPerMole } from '../../src/lib/engine/units/construct';
import type { Fraction } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const ppm = (value: number) => (value / 1e6) as Fraction;
const read = 'pages of 2-hexanone, 2-propanol, sec-butyl acetate and toluene';
/** Recommended limit and dangerous level, ppm. */
const HEXANONE = { limit: ppm(1), danger: ppm(1600) };
const PROPANOL = { limit: ppm(400), danger: ppm(2000) };
const BUTYL_ACETATE = { limit: ppm(200), danger: ppm(1700) };

const upTo = (solvent: string, air: typeof HEXANONE, factor: number, expected: number) => ({
	where: `${solvent}, factor ${factor}`,
	expected,
	actual: () => 1e6 * maximumUse.share.at({ ...air, protection: count(factor) })
});
const enough = (concentration: number, expected: number) => ({
	where: `2-hexanone up to ${concentration} ppm`,
	expected,
	actual: () => smallestProtection.share.at({ ...HEXANONE, concentration: ppm(concentration) }).factor ?? NaN
});
const one = (solvent: string, grams: number, expected: number) => ({
	where: `1 ppm of ${solvent}`,
	expected,
	actual: () => 1e6 * vapourConcentration.at({ share: fraction(1e-6), molarMass: gramsPerMole(grams) })
});

export default [
	published('niosh-npg', 'concentration up to which a respirator is recommended', {
		of: ['maximum-use-share'],
		unit: 'ppm',
		read,
		within: { relative: 1e-9, because: 'factor times limit, or the dangerous level' },
		rows: [
			upTo('2-hexanone', HEXANONE, 10, 10),
			upTo('2-hexanone', HEXANONE, 50, 50),
			upTo('2-hexanone', HEXANONE, 2000, 1600),
			upTo('2-propanol', PROPANOL, 25, 2000),
			upTo('sec-butyl acetate', BUTYL_ACETATE, 25, 1700)
		]
	}),
	published('niosh-npg', 'least factor recommended up to a concentration', {
		of: ['smallest-protection-share'],
		unit: '',
		read,
		within: { absolute: 1e-9, because: 'factors are whole numbers' },
		rows: [enough(10, 10), enough(25, 25), enough(50, 50)]
	}),
	published('niosh-npg', 'conversion printed on the page', {
		of: ['vapour-concentration'],
		unit: 'mg/m³',
		read,
		within: { absolute: 0.006, because: 'printed to two decimals' },
		rows: [one('toluene', 92.1, 3.77), one('2-propanol', 60.1, 2.46), one('2-hexanone', 100.2, 4.1)]
	})
];
