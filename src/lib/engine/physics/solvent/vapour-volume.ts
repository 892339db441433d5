import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';
import { expansion, GAS_RANGE, SOLVENT, SOLVENT_RANGE } from './vapour-expansion';

/** Vapour that a liquid solvent becomes at this temperature: V·(ρ/M)·R·T/p. */
export const vapourVolume = defineFormula({
	id: 'vapour-volume',
	title: { en: 'Solvent vapour', es: 'Vapor de solvente' },
	equation: 'V(vapour) = V(liquid) · ρ · R · T/(M · p)',
	source: arithmetic('ideal gas at one atmosphere'),
	inputs: { liquid: 'volume', ...SOLVENT, gas: 'temperature' },
	gives: 'volume',
	validFor: { liquid: [0, 1], ...SOLVENT_RANGE, gas: GAS_RANGE },
	compute: (load) => load.liquid * expansion(load)
});
