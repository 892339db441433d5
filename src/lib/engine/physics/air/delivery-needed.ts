import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';

/**
 * Free air that a compressor has to deliver for one user that runs part of the time. `duty` is the share of the time it
 * runs, evened out by the receiver; `leak` the share of the delivery that is lost on the way; `reserve` is put on top
 * for wear and for what the numbers do not know.
 */
export const deliveryNeeded = defineFormula({
	id: 'delivery-needed',
	title: { en: 'Compressor delivery needed', es: 'Caudal que debe entregar el compresor' },
	equation: 'Q = q · duty / (1 − leak) · (1 + reserve)',
	source: cite(
		'compressor-sizing-guide',
		'demand by duty cycle and safety factor',
		{ read: 'rules and worked example' },
		'common-practice'
	),
	inputs: { demand: 'flow', duty: 'fraction', leak: 'fraction', reserve: 'fraction' },
	gives: 'flow',
	validFor: { demand: [0, 10], duty: [0, 1], leak: [0, 0.6], reserve: [0, 1] },
	compute: ({ demand, duty, leak, reserve }) => ((demand * duty) / (1 - leak)) * (1 + reserve)
});
