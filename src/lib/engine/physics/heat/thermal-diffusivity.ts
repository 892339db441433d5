import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';

/** How fast a change of temperature spreads through a material: what conducts over what has to be filled with heat. */
export const thermalDiffusivity = defineFormula({
	id: 'thermal-diffusivity',
	title: { en: 'Thermal diffusivity', es: 'Difusividad térmica' },
	equation: 'α = k/(ρ · c)',
	source: cite('cengel-heat', 'ch. 4', { read: 'properties stated in examples 4-4 and 4-5' }, 'handbook'),
	inputs: { conductivity: 'conductivity', density: 'density', heat: 'specific-heat' },
	gives: 'diffusivity',
	validFor: { conductivity: [0.01, 500], density: [0.1, 25_000], heat: [100, 6000] },
	compute: ({ conductivity, density, heat }) => conductivity / (density * heat)
});
