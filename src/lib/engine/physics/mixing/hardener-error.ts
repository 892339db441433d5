import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

/** How much too much (+) or too little (−) hardener a mix holds for its base: target/mixed − 1, ratios as A:B. */
export const hardenerError = defineFormula({
	id: 'hardener-error',
	title: { en: 'Hardener error', es: 'Error de endurecedor' },
	equation: 'error = r(target)/r(mixed) − 1',
	source: arithmetic('relative error of B for the same A'),
	inputs: { mixed: 'ratio', target: 'ratio' },
	gives: 'fraction',
	validFor: { mixed: [0.05, 1000], target: [0.05, 200] },
	compute: ({ mixed, target }) => target / mixed - 1
});
