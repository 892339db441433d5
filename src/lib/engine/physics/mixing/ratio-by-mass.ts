import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

/** A mix ratio stated by volume, as it must read on a scale: r_m = r_v · ρA/ρB. */
export const ratioByMass = defineFormula({
	id: 'ratio-by-mass',
	title: { en: 'Mix ratio by weight', es: 'Relación de mezcla en peso' },
	equation: 'r(weight) = r(volume) · ρA/ρB',
	source: arithmetic('mass is volume times density'),
	inputs: { byVolume: 'ratio', densityA: 'density', densityB: 'density' },
	gives: 'ratio',
	validFor: { byVolume: [0.05, 200], densityA: [500, 5000], densityB: [500, 5000] },
	compute: ({ byVolume, densityA, densityB }) => (byVolume * densityA) / densityB
});
