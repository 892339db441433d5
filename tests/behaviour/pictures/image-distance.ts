import type { Raster } from '../../../src/lib/pictures';

/** Side of the blocks that are averaged first, pixels: half a millimetre of a plain view, about what an eye resolves at arm's length. */
const BLOCK = 2;
const QUANTILES = 20;

/** Relative luminance of an averaged block, 0 to 255, from display values (weights of Rec. ITU-R BT.709, from memory). */
function blocks({ width, height, rgba }: Raster): { columns: number; values: number[] } {
	const [columns, rows] = [Math.floor(width / BLOCK), Math.floor(height / BLOCK)];
	const values = Array.from({ length: columns * rows }, (_, at) => {
		let sum = 0;
		for (let r = 0; r < BLOCK; r++) {
			for (let c = 0; c < BLOCK; c++) {
				const k = ((Math.floor(at / columns) * BLOCK + r) * width + (at % columns) * BLOCK + c) * 4;
				sum += 0.2126 * rgba[k]! + 0.7152 * rgba[k + 1]! + 0.0722 * rgba[k + 2]!;
			}
		}
		return sum / (BLOCK * BLOCK);
	});
	return { columns, values };
}

/** A distribution by equally likely slices: the mean of each, so that rare dots weigh as much as they cover. */
function slices(values: number[]): number[] {
	const sorted = values.toSorted((a, b) => a - b);
	return Array.from({ length: QUANTILES }, (_, k) => {
		const slice = sorted.slice(
			Math.floor((k * sorted.length) / QUANTILES),
			Math.floor(((k + 1) * sorted.length) / QUANTILES)
		);
		return slice.reduce((sum, value) => sum + value, 0) / slice.length;
	});
}

const apart = (a: number[], b: number[]) =>
	a.reduce((sum, value, k) => sum + Math.abs(value - b[k]!), 0) / a.length;

/**
 * How differently two surfaces look wherever their features happen to lie, in steps of 255: the earth mover's
 * distance between their luminances plus that between their local contrasts (the step from block to block, across
 * and down). Nought for two pictures with the same tones and the same edges in other places.
 */
export function imageDistance(one: Raster, other: Raster): number {
	const [a, b] = [one, other].map((raster) => {
		const { columns, values } = blocks(raster);
		const steps = values
			.slice(0, values.length - columns)
			.map((value, k) => Math.abs(value - values[k + columns]!) + Math.abs(value - values[k + 1]!));
		return { tones: slices(values), edges: slices(steps) };
	}) as [{ tones: number[]; edges: number[] }, { tones: number[]; edges: number[] }];
	return apart(a.tones, b.tones) + apart(a.edges, b.edges);
}
