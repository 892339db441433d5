import { grain, salted } from '../paint/noise';
import { direction } from '../paint/way';

/** What can lie in or under a film. */
export type BodyKind =
	'void' | 'particle' | 'gel' | 'rust' | 'haze' | 'grease' | 'foreign' | 'oxide' | 'crack' | 'gap';

/** A closed outline: mm from the focus, µm above the mean of the substrate. */
export type Body = {
	readonly kind: BodyKind;
	readonly outline: readonly (readonly [x: number, y: number])[];
};

/** A section through substrate and film across the focus, open to what a defect adds. */
export type Cut = {
	readonly seed: number;
	/** mm from the focus. */
	readonly x: Float32Array;
	/** Top of the substrate, µm. */
	readonly ground: Float32Array;
	/** Top of the film, µm. */
	readonly top: Float32Array;
	/** Where one coat ends and the next begins, µm; empty for a single coat. */
	coat: Float32Array | undefined;
	readonly bodies: Body[];
};

/** A rounded body lying level. */
export const lens = (x: number, y: number, rx: number, ry: number): Body['outline'] =>
	Array.from({ length: 20 }, (_, k) => {
		const at = direction(k / 20);
		return [x + at.x * rx, y + at.y * ry] as const;
	});

/** An angular body, its corners its own. */
export const shard = (x: number, y: number, rx: number, ry: number, seed: number): Body['outline'] =>
	Array.from({ length: 7 }, (_, k) => {
		const at = direction(k / 7);
		const out = 0.6 + 0.6 * grain(seed, k);
		return [x + at.x * rx * out, y + at.y * ry * out] as const;
	});

/** A jagged gap from one height to another. */
export function crack(x: number, from: number, to: number, wide: number, seed: number): Body['outline'] {
	const own = salted(seed, Math.round(x * 100));
	const along = Array.from({ length: 6 }, (_, k) => ({
		x: x + (grain(own, k) - 0.5) * wide * 2,
		y: from + ((to - from) * k) / 5
	}));
	return [
		...along.map((at, k) => [at.x - (wide * (5 - k)) / 10, at.y] as const),
		...along.toReversed().map((at, k) => [at.x + (wide * k) / 10, at.y] as const)
	];
}

/** A strip between two heights, from one place to another. */
export const strip = (x0: number, x1: number, low: number, high: number): Body['outline'] => [
	[x0, low],
	[x0, high],
	[x1, high],
	[x1, low]
];
