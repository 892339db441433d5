import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

/** Volume of a part over its heated surface, from what the scale and the ruler say. Half the thickness of a plate. */
export const bodyDepth = defineFormula({
	id: 'body-depth',
	title: { en: 'Volume over surface', es: 'Volumen entre superficie' },
	equation: 'L = m/(ρ · A)',
	source: arithmetic('definition'),
	inputs: { mass: 'mass', density: 'density', area: 'area' },
	gives: 'length',
	validFor: { mass: [1e-5, 1e4], density: [500, 20_000], area: [1e-5, 1e3] },
	compute: ({ mass, density, area }) => mass / (density * area)
});
