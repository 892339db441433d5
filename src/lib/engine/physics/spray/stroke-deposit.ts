import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

/**
 * Dry coating one stroke leaves on each metre of its path, as the area of the film's cross-section: Q·VS·TE/v. Spread over
 * the distance from one stroke to the next it is the film of a pass.
 */
export const strokeDeposit = defineFormula({
	id: 'stroke-deposit',
	title: { en: 'Cross-section of one stroke', es: 'Sección transversal de una pasada de pistola' },
	equation: 'S = Q · VS · TE/v',
	source: arithmetic('solids sprayed in a second over the path of a second'),
	inputs: { flow: 'flow', solids: 'fraction', transfer: 'fraction', speed: 'speed' },
	gives: 'area',
	validFor: { flow: [0, 1e-4], solids: [0.02, 1], transfer: [0.05, 1], speed: [0.01, 5] },
	compute: ({ flow, solids, transfer, speed }) => (flow * solids * transfer) / speed
});
