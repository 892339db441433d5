import { vapourConcentration } from '../../src/lib/engine/physics/exposure/vapour-concentration';
import { SOLVENTS, type SolventId } from '../../src/lib/engine/solvents/solvents';
import type { Fraction } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const read = 'pages of these solvents';
const burns = (id: SolventId, list: 'nfpa' | 'iec', expected: number) => ({
	where: SOLVENTS[id].name.en,
	expected,
	actual: () => {
		const { nfpa, iec } = { nfpa: undefined, ...SOLVENTS[id] };
		return 100 * ((list === 'nfpa' ? nfpa : iec)?.limit ?? NaN);
	}
});
const weight = (id: SolventId, ppm: number, expected: number) => ({
	where: `${SOLVENTS[id].name.en}, ${ppm} ppm`,
	expected,
	actual: () =>
		1e6 * vapourConcentration.at({ share: (ppm / 1e6) as Fraction, molarMass: SOLVENTS[id].molarMass })
});

export default [
	published('niosh-idlh', 'lower explosive limits', {
		of: ['materials'],
		unit: '%',
		read,
		within: { absolute: 0.05, because: 'printed to one decimal' },
		rows: [
			burns('toluene', 'nfpa', 1.1),
			burns('butyl-acetate', 'nfpa', 1.7),
			burns('ethyl-acetate', 'nfpa', 2.0),
			burns('mibk', 'iec', 1.2)
		]
	}),
	published('niosh-idlh', 'limits printed in ppm and in mg/m³', {
		of: ['vapour-concentration', 'materials'],
		unit: 'mg/m³',
		read,
		within: { relative: 0.032, because: 'the ethyl acetate limit of 1440 is printed as 1400' },
		rows: [
			weight('mibk', 50, 205),
			weight('mibk', 100, 410),
			weight('butyl-acetate', 150, 713),
			weight('ethyl-acetate', 400, 1400),
			weight('toluene', 50, 188)
		]
	})
];
