import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

/**
 * What round through-holes change of a sheet's area: each takes a disc off every coated side and adds its wall. Negative where
 * the discs outweigh the walls, positive where the sheet is thicker than half the hole is wide, both sides coated, or a
 * quarter, one side coated. Add it to the area of the sheet. Sizes up to 20 m.
 */
export const holeArea = defineFormula({
	id: 'hole-area',
	title: { en: 'Area that holes add or take', es: 'Área que suman o quitan los agujeros' },
	equation: 'ΔA = n · π · ⌀ · (thickness − sides · ⌀/4)',
	source: arithmetic('geometry'),
	inputs: { holes: 'count', diameter: 'length', thickness: 'length', sides: 'count' },
	gives: 'area',
	validFor: { holes: [0, 10_000], diameter: [0, 20], thickness: [0, 20], sides: [1, 2] },
	compute: ({ holes, diameter, thickness, sides }) =>
		holes * Math.PI * diameter * (thickness - (sides * diameter) / 4)
});
