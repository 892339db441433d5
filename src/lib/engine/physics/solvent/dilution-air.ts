import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';

/** Air that thins a volume of vapour to a share of its lower explosive limit: V·(1 − LEL)/(share·LEL). */
export const dilutionAir = defineFormula({
	id: 'dilution-air',
	title: { en: 'Dilution air', es: 'Aire de dilución' },
	equation: 'air = vapour · (1 − LEL)/(share · LEL)',
	source: cite('osha-1910-94', '(c)(6)(ii)(a), with 4 for a quarter of the limit'),
	inputs: { vapour: 'volume', limit: 'fraction', share: 'fraction' },
	gives: 'volume',
	validFor: { vapour: [0, 1e4], limit: [0.001, 0.2], share: [0.01, 1] },
	compute: ({ vapour, limit, share }) => (vapour * (1 - limit)) / (share * limit)
});
