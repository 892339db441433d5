import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

/**
 * Mean dry film of a foil or coupon weighed bare and coated: t = m/(A·ρ). ρ is that of the cured film, not of the liquid; the
 * range takes in metal films, on which the method is best documented.
 */
export const filmFromMass = defineFormula({
	id: 'film-from-mass',
	title: { en: 'Film from weight gain', es: 'Película por aumento de peso' },
	equation: 'DFT = Δm/(A · ρ of the cured film)',
	source: arithmetic('volume is mass over density'),
	inputs: { gain: 'mass', area: 'area', density: 'density' },
	gives: 'length',
	validFor: { gain: [0, 1], area: [1e-4, 10], density: [500, 20_000] },
	compute: ({ gain, area, density }) => gain / (area * density)
});
