import { cite } from '../../sources/provenance';
import { ATMOSPHERE, GAS_CONSTANT } from '../constants';
import { defineFormula } from '../formula';

/** Exposure limits in ppm as mass in a volume of air at 25 °C and one atmosphere (24.45 L/mol). */
export const vapourConcentration = defineFormula({
	id: 'vapour-concentration',
	title: { en: 'Vapour in the air', es: 'Vapor en el aire' },
	equation: 'c = x · M · p/(R · 298.15 K)',
	source: cite(
		'niosh-npg',
		'conversion of ppm',
		{ read: 'limits in both units on the pages of five solvents' },
		'handbook'
	),
	inputs: { share: 'fraction', molarMass: 'molar-mass' },
	gives: 'density',
	validFor: { share: [0, 0.1], molarMass: [0.002, 0.5] },
	compute: ({ share, molarMass }) => (share * molarMass * ATMOSPHERE) / (GAS_CONSTANT * 298.15)
});
