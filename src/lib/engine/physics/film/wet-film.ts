import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';

/**
 * Wet film to spray for a wanted dry film: WFT = DFT·(1 + x)/VS, with VS the volume solids and x the volume of thinner per
 * volume of coating. Takes volumes as adding up.
 */
export const wetFilm = defineFormula({
	id: 'wet-film',
	title: { en: 'Wet film', es: 'Película húmeda' },
	equation: 'WFT = DFT · (1 + x)/VS',
	source: cite('astm-d4414', 'significance and use', { read: 'significance clause of D4414' }),
	inputs: { dry: 'length', solids: 'fraction', thinner: 'fraction' },
	gives: 'length',
	validFor: { dry: [0, 1e-3], solids: [0.02, 1], thinner: [0, 2] },
	compute: ({ dry, solids, thinner }) => (dry * (1 + thinner)) / solids
});
