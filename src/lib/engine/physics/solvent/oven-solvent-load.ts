import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';
import { EXPLOSIVE_LIMIT_RANGE, expansion, GAS_RANGE, SOLVENT, SOLVENT_RANGE } from './vapour-expansion';

/**
 * Most liquid solvent that may go into an oven without air exchange for its vapour to stay at a share of the lower
 * explosive limit. Hot air is thinner, so a hot oven takes less than a cold one of the same size.
 */
export const ovenSolventLoad = defineFormula({
	id: 'oven-solvent-load',
	title: { en: 'Solvent allowed in the oven', es: 'Disolvente permitido en el horno' },
	equation: 'V(liquid) = share · LEL · V(oven) · p · M/(ρ · R · T)',
	source: arithmetic('ideal gas at one atmosphere'),
	inputs: { oven: 'volume', gas: 'temperature', limit: 'fraction', share: 'fraction', ...SOLVENT },
	gives: 'volume',
	validFor: {
		oven: [0.01, 500],
		gas: GAS_RANGE,
		limit: EXPLOSIVE_LIMIT_RANGE,
		share: [0.01, 1],
		...SOLVENT_RANGE
	},
	compute: (load) => (load.share * load.limit * load.oven) / expansion(load)
});
