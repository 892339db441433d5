import { vapourConcentration } from '../../src/lib/engine/physics/exposure/vapour-concentration';
import { fraction } from '../../src/lib/engine/units/construct';
import type { MolarMass } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const limit = (solvent: string, ppm: number, grams: number, milligrams: number) => ({
	where: `${solvent}, ${ppm} ppm`,
	expected: milligrams,
	actual: () =>
		vapourConcentration.at({ share: fraction(ppm / 1e6), molarMass: (grams / 1e3) as MolarMass }) * 1e6
});

export default published('niosh-npg', 'limits printed in ppm and in mg/m³', {
	of: ['vapour-concentration'],
	unit: 'mg/m³',
	read: 'pages of these five solvents',
	within: { relative: 0.012, because: 'the guide rounds to two or three digits' },
	rows: [
		limit('acetone', 1000, 58.08, 2400),
		limit('2-butanone', 200, 72.11, 590),
		limit('toluene', 100, 92.14, 375),
		limit('xylenes', 100, 106.17, 435),
		limit('n-butyl acetate', 150, 116.16, 710)
	]
});
