import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

/** Mean dry film of one pass: Q·VS·TE/(v·index), index being the distance from one stroke to the next. */
export const filmPerPass = defineFormula({
	id: 'film-per-pass',
	title: { en: 'Dry film of one pass', es: 'Película seca de una pasada' },
	equation: 'DFT = Q · VS · TE/(v · index)',
	source: arithmetic('solids sprayed in a second over area swept in a second'),
	inputs: { flow: 'flow', solids: 'fraction', transfer: 'fraction', speed: 'speed', index: 'length' },
	gives: 'length',
	validFor: { flow: [0, 1e-4], solids: [0.02, 1], transfer: [0.05, 1], speed: [0.01, 5], index: [0.005, 1] },
	compute: ({ flow, solids, transfer, speed, index }) => (flow * solids * transfer) / (speed * index)
});
