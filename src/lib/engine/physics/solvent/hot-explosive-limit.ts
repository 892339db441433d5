import { cite } from '../../sources/provenance';
import { fahrenheit } from '../../units/construct';
import { defineFormula } from '../formula';

const HOT = fahrenheit(250);

/** Lower explosive limit in a hot oven: above 250 °F (120 °C) the limit measured cold counts for seven tenths only. */
export const hotExplosiveLimit = defineFormula({
	id: 'hot-explosive-limit',
	title: { en: 'Lower explosive limit in the oven', es: 'Límite inferior de explosividad en el horno' },
	equation: 'LEL(hot) = 0.7 · LEL above 250 °F (121 °C)',
	source: cite('nfpa-86', '§11.6, temperature correction', {
		read: 'the factor as quoted in trade articles'
	}),
	inputs: { limit: 'fraction', gas: 'temperature' },
	gives: 'fraction',
	validFor: { limit: [0.001, 0.2], gas: [253.15, 533.15] },
	compute: ({ limit, gas }) => (gas > HOT ? 0.7 * limit : limit)
});
