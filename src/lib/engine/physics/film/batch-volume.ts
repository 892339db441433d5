import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';

/** Volume of unthinned coating (all components together) for an area and a dry film: A·DFT/(VS·TE). */
export const batchVolume = defineFormula({
	id: 'batch-volume',
	title: { en: 'Coating to mix', es: 'Recubrimiento por mezclar' },
	equation: 'V = area · DFT/(VS · TE)',
	source: cite('coverage-q-and-a', 'equation', { read: 'page with its worked example' }, 'handbook'),
	inputs: { area: 'area', dry: 'length', solids: 'fraction', transfer: 'fraction' },
	gives: 'volume',
	validFor: { area: [0, 1e4], dry: [1e-6, 1e-3], solids: [0.02, 1], transfer: [0.05, 1] },
	compute: ({ area, dry, solids, transfer }) => (area * dry) / (solids * transfer)
});
