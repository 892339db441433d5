import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';

/** Dry film that a measured wet film leaves: DFT = WFT·VS/(1 + x), x the volume of thinner per volume of coating. */
export const dryFilm = defineFormula({
	id: 'dry-film',
	title: { en: 'Dry film', es: 'Película seca' },
	equation: 'DFT = WFT · VS/(1 + x)',
	source: cite('astm-d4414', 'significance and use', { read: 'significance clause of D4414' }),
	inputs: { wet: 'length', solids: 'fraction', thinner: 'fraction' },
	gives: 'length',
	validFor: { wet: [0, 1e-2], solids: [0.02, 1], thinner: [0, 2] },
	compute: ({ wet, solids, thinner }) => (wet * solids) / (1 + thinner)
});
