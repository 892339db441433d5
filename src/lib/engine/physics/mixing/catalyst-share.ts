import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

const share = (id: string, en: string, es: string, equation: string, of: (ratio: number) => number) =>
	defineFormula({
		id: `catalyst-share-of-${id}`,
		title: { en, es },
		equation,
		source: arithmetic('r parts A to one part B'),
		inputs: { ratio: 'ratio' },
		gives: 'fraction',
		validFor: { ratio: [0.05, 200] },
		compute: ({ ratio }) => of(ratio)
	});

/**
 * What a mix of r parts A to one part B reads as a percentage. Of the base it is the parts per hundred of a data sheet: 25:1
 * is 4 parts per hundred, 4 % of A. Of the total it is less, 3.85 %: which of the two is meant must be on the sheet.
 */
export const catalystShare = {
	ofBase: share(
		'base',
		'Catalyst, share of the base',
		'Catalizador, parte de la base',
		'B/A = 1/r',
		(r) => 1 / r
	),
	ofTotal: share(
		'total',
		'Catalyst, share of the whole mix',
		'Catalizador, parte de toda la mezcla',
		'B/(A + B) = 1/(r + 1)',
		(r) => 1 / (r + 1)
	)
};
