import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';

/** Area a volume of unthinned coating covers at a dry film, with the share that reaches the part: VS·TE/DFT. */
export const spreadingRate = defineFormula({
	id: 'spreading-rate',
	title: { en: 'Coverage', es: 'Rendimiento' },
	equation: 'coverage = VS · TE/DFT',
	source: cite('coverage-q-and-a', 'equation', { read: 'page with its worked example' }, 'handbook'),
	inputs: { dry: 'length', solids: 'fraction', transfer: 'fraction' },
	gives: 'spreading-rate',
	validFor: { dry: [1e-6, 1e-3], solids: [0.02, 1], transfer: [0.05, 1] },
	compute: ({ dry, solids, transfer }) => (solids * transfer) / dry
});
