import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';

/**
 * How unevenly a part heats: h·L/k with L its volume over its heated surface. Below 0.1 one temperature stands for the
 * whole part; above it (plastics, thick blocks) the skin runs ahead of the core and no lumped time may be used.
 */
export const biot = defineFormula({
	id: 'biot',
	title: { en: 'Biot number', es: 'Número de Biot' },
	equation: 'Bi = h · L/k',
	source: cite('holman-heat', 'ch. 4', { read: 'as worked in example 4-1' }, 'handbook'),
	inputs: { heatTransfer: 'heat-transfer', depth: 'length', conductivity: 'conductivity' },
	gives: 'fraction',
	validFor: { heatTransfer: [0.1, 10_000], depth: [1e-6, 2], conductivity: [0.01, 500] },
	compute: ({ heatTransfer, depth, conductivity }) => (heatTransfer * depth) / conductivity
});
