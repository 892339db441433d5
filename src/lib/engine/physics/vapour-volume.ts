import { arithmetic } from '../sources/provenance';
import { ATMOSPHERE, GAS_CONSTANT } from './constants';
import { defineFormula } from './formula';

/** Vapour that a liquid solvent becomes at this temperature: V·(ρ/M)·R·T/p. */
export const vapourVolume = defineFormula({
	id: 'vapour-volume',
	title: { en: 'Solvent vapour', es: 'Vapor de solvente' },
	equation: 'V(vapour) = V(liquid) · ρ · R · T/(M · p)',
	source: arithmetic('ideal gas at one atmosphere'),
	inputs: { liquid: 'volume', density: 'density', molarMass: 'molar-mass', gas: 'temperature' },
	gives: 'volume',
	validFor: { liquid: [0, 1], density: [500, 2000], molarMass: [0.02, 0.5], gas: [253.15, 773.15] },
	compute: ({ liquid, density, molarMass, gas }) =>
		(liquid * density * GAS_CONSTANT * gas) / (molarMass * ATMOSPHERE)
});
