import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';

/** 15 ft. */
const DEPTH = 15 * 0.3048;

/** Least area of the panels that let an explosion out of an oven: one square foot for every 15 cubic feet of it. */
export const explosionReliefArea = defineFormula({
	id: 'explosion-relief-area',
	title: { en: 'Explosion relief of the oven', es: 'Alivio de explosión del horno' },
	equation: 'A = V/(15 ft)',
	source: cite('nfpa-86', 'edition of 1999, explosion relief of Class A ovens', {
		read: 'the ratio as quoted in a trade article'
	}),
	inputs: { oven: 'volume' },
	gives: 'area',
	validFor: { oven: [0.01, 500] },
	compute: ({ oven }) => oven / DEPTH
});
