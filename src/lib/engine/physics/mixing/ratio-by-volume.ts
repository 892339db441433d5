import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

/** A mix ratio stated by weight, as it must read on measuring cups: r_v = r_m · ρB/ρA. */
export const ratioByVolume = defineFormula({
	id: 'ratio-by-volume',
	title: { en: 'Mix ratio by volume', es: 'Proporción de mezcla en volumen' },
	equation: 'r(volume) = r(weight) · ρB/ρA',
	source: arithmetic('volume is mass over density'),
	inputs: { byMass: 'ratio', densityA: 'density', densityB: 'density' },
	gives: 'ratio',
	validFor: { byMass: [0.05, 200], densityA: [500, 5000], densityB: [500, 5000] },
	compute: ({ byMass, densityA, densityB }) => (byMass * densityB) / densityA
});
