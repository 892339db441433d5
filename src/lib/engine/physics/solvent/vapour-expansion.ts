import { ATMOSPHERE, GAS_CONSTANT } from '../constants';

type Vapour = { readonly density: number; readonly molarMass: number; readonly gas: number };

/** What a liquid solvent is, and how warm its vapour: inputs of the vapour formulas. */
export const SOLVENT = { density: 'density', molarMass: 'molar-mass' } as const;
export const SOLVENT_RANGE: { [K in keyof typeof SOLVENT]: [number, number] } = {
	density: [500, 2000],
	molarMass: [0.02, 0.5]
};
export const GAS_RANGE: [number, number] = [253.15, 773.15];
export const EXPLOSIVE_LIMIT_RANGE: [number, number] = [0.001, 0.2];

/** Volumes of vapour that one volume of liquid becomes at the gas’s temperature (K) and one atmosphere: ρ·R·T/(M·p). */
export const expansion = ({ density, molarMass, gas }: Vapour): number =>
	(density * GAS_CONSTANT * gas) / (molarMass * ATMOSPHERE);
