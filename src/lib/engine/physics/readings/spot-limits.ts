import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';

const spotLimit = (id: string, en: string, es: string, factor: number) =>
	defineFormula({
		id,
		title: { en, es },
		equation: `spot limit = ${factor} · specified limit`,
		source: cite('sspc-pa-2', '§9, Table 1, default level 3', { read: 'stored text of 2012/2015' }),
		inputs: { specified: 'length' },
		gives: 'length',
		validFor: { specified: [0, 0.1] },
		compute: ({ specified }) => specified * factor
	});

/** How far the mean of one spot may leave the specified film; single readings are not limited. */
export const spotLimits = {
	lowest: spotLimit('spot-minimum', 'Lowest spot', 'Punto más bajo', 0.8),
	highest: spotLimit('spot-maximum', 'Highest spot', 'Punto más alto', 1.2)
};
