import { arithmetic } from '../../sources/provenance';
import type { Text } from '../../text';
import type { Dimension } from '../../units/dimension';
import { defineFormula } from '../formula';

const TITLE: Text = { en: 'Area to coat, one part', es: 'Área por recubrir, una pieza' };
const SIZE: [number, number] = [0, 20];
const SIDES: [number, number] = [1, 2];

const shape = <const N extends string>(
	id: string,
	equation: string,
	sizes: readonly N[],
	compute: (size: Record<N | 'sides', number>) => number
) =>
	defineFormula({
		id: `area-${id}`,
		title: TITLE,
		equation,
		source: arithmetic('geometry'),
		inputs: Object.fromEntries([...sizes.map((size) => [size, 'length']), ['sides', 'count']]) as Record<
			N,
			'length'
		> & {
			sides: 'count';
		},
		gives: 'area',
		validFor: Object.fromEntries([...sizes.map((size) => [size, SIZE]), ['sides', SIDES]]) as Record<
			N | 'sides',
			[number, number]
		>,
		compute: compute as (values: Record<string, number>) => number
	});

/**
 * Surface of one part by its shape, sizes up to 20 m. `sides` is 1 for one face (of a tube or box: the outside) and 2 for
 * both. Edges of sheet are left out: they are thin against the faces and their overspray is in the transfer efficiency.
 */
export const partArea = {
	plate: shape(
		'plate',
		'A = sides · length · width',
		['length', 'width'],
		({ length, width, sides }) => sides * length * width
	),
	bracket: shape(
		'bracket',
		'A = sides · (leg + other leg) · width',
		['leg', 'otherLeg', 'width'],
		({ leg, otherLeg, width, sides }) => sides * (leg + otherLeg) * width
	),
	tube: shape(
		'tube',
		'A = π · length · (outer ⌀ + inner ⌀ where both sides)',
		['outer', 'inner', 'length'],
		({ outer, inner, length, sides }) => Math.PI * length * (outer + (sides === 2 ? inner : 0))
	),
	bar: shape(
		'bar',
		'A = π · ⌀ · length + sides · π · ⌀²/4 (sides: end faces coated)',
		['diameter', 'length'],
		({ diameter, length, sides }) => Math.PI * diameter * length + (sides * Math.PI * diameter ** 2) / 4
	),
	ring: shape(
		'ring',
		'A = sides · π/4 · (outer ⌀² − inner ⌀²) + π · thickness · (outer ⌀ + inner ⌀)',
		['outer', 'inner', 'thickness'],
		({ outer, inner, thickness, sides }) =>
			(sides * Math.PI * (outer ** 2 - inner ** 2)) / 4 + Math.PI * thickness * (outer + inner)
	),
	box: shape(
		'box',
		'A = l·w + 2·h·(l + w), one face open; both sides: and the same inside, each size less its walls',
		['length', 'width', 'height', 'wall'],
		({ length, width, height, wall, sides }) => {
			const open = (l: number, w: number, h: number) => l * w + 2 * h * (l + w);
			const inside = (size: number, walls: number) => Math.max(size - walls * wall, 0);
			return (
				open(length, width, height) +
				(sides === 2 ? open(inside(length, 2), inside(width, 2), inside(height, 1)) : 0)
			);
		}
	)
} satisfies Record<string, { readonly gives: Dimension }>;
