import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

/** Liquid solvent that a load still carries at the oven door: area · wet film · share of the wet film left as solvent. */
export const solventIntoOven = defineFormula({
	id: 'solvent-into-oven',
	title: { en: 'Solvent carried into the oven', es: 'Disolvente que entra al horno' },
	equation: 'V = area · WFT · solvent share at the oven door',
	source: arithmetic('volume of the film times its solvent share'),
	inputs: { area: 'area', wet: 'length', share: 'fraction' },
	gives: 'volume',
	validFor: { area: [0, 1e4], wet: [0, 1e-2], share: [0, 1] },
	compute: ({ area, wet, share }) => area * wet * share
});
