import { count, kilograms, millimetres, substrate, thermal, type Part, type SubstrateId } from '$lib/engine';
import type { Random } from '../random';
import type { PartSort } from './parts';

/** Rough solid volume in mm³ of a part of these sizes in mm, for the mass on the ticket. */
function solid(sort: PartSort['shape'], l: number, w: number, h: number, t: number) {
	switch (sort) {
		case 'plate':
			return l * w * t;
		case 'bar':
			return (Math.PI / 4) * w * w * l;
		case 'tube':
		case 'ring':
			return (Math.PI / 4) * (w * w - Math.max(w - 2 * t, 0) ** 2) * l;
		case 'box':
			return (l * w + 2 * h * (l + w)) * t;
		case 'bracket':
			return l * (w + h) * t;
	}
}

/** Mass in kg of a part of this sort and material with these sizes in mm. */
export const massOf = (
	shape: PartSort['shape'],
	material: SubstrateId,
	[length, width, height, thickness]: readonly [number, number, number, number]
) =>
	kilograms(
		Number(
			((solid(shape, length, width, height, thickness) / 1e9) * thermal(material).density.value).toPrecision(
				3
			)
		)
	);

/** A sound part of this sort: masking list complete, surface oily from machining. */
export function soundPart(sort: PartSort, material: SubstrateId, random: Random): Part {
	const size = ([low, high]: readonly [number, number]) => random.between(low, high, high < 10 ? 0.1 : 1);
	const round = sort.shape === 'tube' || sort.shape === 'bar' || sort.shape === 'ring';
	const length = size(sort.length);
	const width = size(sort.width);
	const thickness = sort.shape === 'bar' ? width : Math.min(size(sort.thickness), width / 2.5);
	const height =
		sort.shape === 'plate' ? thickness : sort.shape === 'ring' ? length : round ? width : size(sort.height);
	const features = sort.features.filter(() => !random.onceIn(3));
	return {
		name: { en: sort.en, es: sort.es },
		count: count(random.between(2, 60, 1)),
		material,
		magnetSticks: substrate(material).magnetic === true,
		shape: sort.shape,
		length: millimetres(length),
		width: millimetres(width),
		height: millimetres(height),
		thickness: millimetres(thickness),
		mass: massOf(sort.shape, material, [length, width, height, thickness]),
		porous: material === 'aluminium-casting',
		cavity: 'none',
		features,
		masked: features,
		fitted: [],
		surface: random.onceIn(4) ? 'bare' : 'oily',
		blindHole: false,
		tempered: null,
		humidStore: false
	};
}
