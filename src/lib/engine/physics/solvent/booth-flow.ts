import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

/** Air a booth moves: mean velocity over the open face times its area. */
export const boothFlow = defineFormula({
	id: 'booth-flow',
	title: { en: 'Booth air flow', es: 'Caudal de aire de la cabina' },
	equation: 'Q = v · A',
	source: arithmetic('continuity'),
	inputs: { velocity: 'speed', face: 'area' },
	gives: 'flow',
	validFor: { velocity: [0, 5], face: [0, 200] },
	compute: ({ velocity, face }) => velocity * face
});
