import { arithmetic } from '../sources/provenance';
import { ATMOSPHERE, GAS_CONSTANT } from './constants';
import { defineFormula } from './formula';

/** Vapour of a liquid solvent in a closed oven, as a share of its lower explosive limit; 1 is the limit itself. */
export const ovenVapourShare = defineFormula({
	id: 'oven-vapour-share',
	title: { en: 'Share of the lower explosive limit', es: 'Parte del límite inferior de explosividad' },
	equation: 'share = V(liquid) · ρ · R · T/(M · p · LEL · V(oven))',
	source: arithmetic('ideal gas at one atmosphere'),
	inputs: {
		liquid: 'volume',
		oven: 'volume',
		gas: 'temperature',
		limit: 'fraction',
		density: 'density',
		molarMass: 'molar-mass'
	},
	gives: 'fraction',
	validFor: {
		liquid: [0, 1],
		oven: [0.01, 500],
		gas: [253.15, 773.15],
		limit: [0.001, 0.2],
		density: [500, 2000],
		molarMass: [0.02, 0.5]
	},
	compute: ({ liquid, oven, gas, limit, density, molarMass }) =>
		(liquid * density * GAS_CONSTANT * gas) / (molarMass * ATMOSPHERE * limit * oven)
});
