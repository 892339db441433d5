import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';
import { EXPLOSIVE_LIMIT_RANGE, expansion, GAS_RANGE, SOLVENT, SOLVENT_RANGE } from './vapour-expansion';

/** Vapour of a liquid solvent in a closed oven, as a share of its lower explosive limit; 1 is the limit itself. */
export const ovenVapourShare = defineFormula({
	id: 'oven-vapour-share',
	title: { en: 'Share of the lower explosive limit', es: 'Parte del límite inferior de explosividad' },
	equation: 'share = V(liquid) · ρ · R · T/(M · p · LEL · V(oven))',
	source: arithmetic('ideal gas at one atmosphere'),
	inputs: { liquid: 'volume', oven: 'volume', gas: 'temperature', limit: 'fraction', ...SOLVENT },
	gives: 'fraction',
	validFor: {
		liquid: [0, 1],
		oven: [0.01, 500],
		gas: GAS_RANGE,
		limit: EXPLOSIVE_LIMIT_RANGE,
		...SOLVENT_RANGE
	},
	compute: (load) => (load.liquid * expansion(load)) / (load.limit * load.oven)
});
