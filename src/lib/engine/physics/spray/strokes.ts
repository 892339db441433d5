import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

/** Strokes that cover a face of this width, each overlapping the last by a share of the fan. */
export const strokes = defineFormula({
	id: 'strokes',
	title: { en: 'Strokes per pass', es: 'Pasadas de pistola por mano' },
	equation: 'n = 1 + ⌈(width − fan)/(fan · (1 − overlap))⌉',
	source: arithmetic('geometry'),
	inputs: { width: 'length', fan: 'length', overlap: 'fraction' },
	gives: 'count',
	validFor: { width: [0.001, 20], fan: [0.01, 1], overlap: [0, 0.9] },
	// A face that ends exactly at a stroke's edge must not need one more for a rounding error in the last digit.
	compute: ({ width, fan, overlap }) =>
		1 + Math.max(0, Math.ceil((width - fan) / (fan * (1 - overlap)) - 1e-9))
});
