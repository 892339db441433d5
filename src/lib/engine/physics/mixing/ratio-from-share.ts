import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

const ratio = (id: string, en: string, es: string, equation: string, of: (share: number) => number) =>
	defineFormula({
		id: `ratio-from-share-of-${id}`,
		title: { en, es },
		equation,
		source: arithmetic('r parts A to one part B'),
		inputs: { share: 'fraction' },
		gives: 'ratio',
		validFor: { share: [0.005, 0.95] },
		compute: ({ share }) => of(share)
	});

/**
 * Mix ratio A:B from a printed percentage of catalyst. Parts per hundred are of the base: 4 parts per hundred, 4 % of A, is
 * 25:1; 4 % of the whole mix is 24:1. Share 0.5 % to 95 %.
 */
export const ratioFromShare = {
	ofBase: ratio(
		'base',
		'Mix ratio from parts per hundred of base',
		'Relación de mezcla por partes por cien de base',
		'r = 1/p',
		(p) => 1 / p
	),
	ofTotal: ratio(
		'total',
		'Mix ratio from percent of the whole mix',
		'Relación de mezcla por porcentaje de toda la mezcla',
		'r = (1 − p)/p',
		(p) => (1 - p) / p
	)
};
