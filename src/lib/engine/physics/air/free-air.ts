import { cite } from '../../sources/provenance';
import { AIR_GAS_CONSTANT } from '../constants';
import { defineFormula } from '../formula';

/**
 * Room that a flow of dry air takes up at a stated pressure (absolute) and temperature: free air at those of the
 * intake, a standard flow at those of the standard used. Compressors and tools are rated in it, so the reference has to
 * be said: 20 °C against 0 °C is 7 %.
 */
export const freeAir = defineFormula({
	id: 'free-air',
	title: { en: 'Free air', es: 'Aire libre' },
	equation: 'Q = ṁ · R · T / p',
	source: cite(
		'esposito-fluid-power',
		'example 13-6',
		{ read: 'gas law as worked in an open textbook-companion project' },
		'handbook'
	),
	inputs: { flow: 'mass-flow', temperature: 'temperature', pressure: 'pressure' },
	gives: 'flow',
	validFor: { flow: [0, 10], temperature: [250, 330], pressure: [60e3, 110e3] },
	compute: ({ flow, temperature, pressure }) => (flow * AIR_GAS_CONSTANT * temperature) / pressure
});
