import { arithmetic } from '../sources/provenance';
import { ATMOSPHERE, GAS_CONSTANT } from './constants';
import { defineFormula } from './formula';

/**
 * Most liquid solvent that may go into an oven without air exchange for its vapour to stay at a share of the lower
 * explosive limit. Hot air is thinner, so a hot oven takes less than a cold one of the same size.
 */
export const ovenSolventLoad = defineFormula({
	id: 'oven-solvent-load',
	title: { en: 'Solvent allowed in the oven', es: 'Disolvente permitido en el horno' },
	equation: 'V(liquid) = share · LEL · V(oven) · p · M/(ρ · R · T)',
	source: arithmetic('ideal gas at one atmosphere'),
	inputs: {
		oven: 'volume',
		gas: 'temperature',
		limit: 'fraction',
		share: 'fraction',
		density: 'density',
		molarMass: 'molar-mass'
	},
	gives: 'volume',
	validFor: {
		oven: [0.01, 500],
		gas: [253.15, 773.15],
		limit: [0.001, 0.2],
		share: [0.01, 1],
		density: [500, 2000],
		molarMass: [0.02, 0.5]
	},
	compute: ({ oven, gas, limit, share, density, molarMass }) =>
		(share * limit * oven * ATMOSPHERE * molarMass) / (density * GAS_CONSTANT * gas)
});
