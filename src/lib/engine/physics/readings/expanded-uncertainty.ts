import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';

/** Half width of the interval that holds the true value with the confidence of the factor: U = k·u. Factor 0.5 to 10 000. */
export const expandedUncertainty = defineFormula({
	id: 'expanded-uncertainty',
	title: { en: 'Expanded uncertainty', es: 'Incertidumbre expandida' },
	equation: 'U = k · u',
	source: cite('jcgm-100', '6.2.1'),
	inputs: { standard: 'length', factor: 'fraction' },
	gives: 'length',
	validFor: { standard: [0, 1e3], factor: [0.5, 10_000] },
	compute: ({ standard, factor }) => factor * standard
});
