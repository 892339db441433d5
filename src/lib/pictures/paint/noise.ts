import type { Frame } from './frame';

/**
 * A number in [0, 1) that belongs to a whole-numbered place, alike on every machine: multiplications and
 * shifts of 32-bit integers only, because sines differ between engines in their last digits.
 */
export function grain(seed: number, x: number, y = 0): number {
	let h = (seed ^ Math.imul(x, 0x27d4eb2d)) | 0;
	h = Math.imul(h ^ (h >>> 15), 0x85ebca6b) ^ Math.imul(y, 0x165667b1);
	h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
	h = Math.imul(h ^ (h >>> 16), 0x2c1b3c6d);
	return ((h ^ (h >>> 15)) >>> 0) / 4294967296;
}

/** One seed out of another, for a purpose of its own. */
export const salted = (seed: number, salt: number): number =>
	Math.floor(grain(seed, salt, 77) * 4294967296) | 0;

const eased = (t: number) => t * t * (3 - 2 * t);

/**
 * Value noise over a frame, −1 to 1, anchored in millimetres so that a closer frame shows the same bumps larger.
 * Where a bump is smaller than two pixels, what is left of it is its average: weaker, never aliased; below one it is
 * nought.
 *
 * @param across wavelength along x, mm, more than 0
 * @param down wavelength along y, mm; the same as across unless told
 */
export function noise(frame: Frame, seed: number, across: number, down = across): Float32Array {
	const { width, height, left, top, pixel } = frame;
	const cellX = Math.max(across / 2, pixel);
	const cellY = Math.max(down / 2, pixel);
	const strength = (across / 2 / cellX) * (down / 2 / cellY) * 2;
	const values = new Float32Array(width * height);
	if (across < pixel && down < pixel) return values;
	const first = Math.floor((left + pixel / 2) / cellX);
	const column = new Int32Array(width);
	const between = new Float32Array(width);
	for (let c = 0; c < width; c++) {
		const u = (left + (c + 0.5) * pixel) / cellX;
		column[c] = Math.floor(u) - first;
		between[c] = eased(u - Math.floor(u));
	}
	const cells = (column[width - 1] ?? 0) + 2;
	const line = (y: number, into: Float32Array) => {
		for (let k = 0; k < cells; k++) into[k] = (grain(seed, first + k, y) - 0.5) * strength;
		return into;
	};
	let at = NaN;
	let upper = new Float32Array(cells);
	let lower = new Float32Array(cells);
	const blended = new Float32Array(cells);
	for (let r = 0; r < height; r++) {
		const v = (top + (r + 0.5) * pixel) / cellY;
		const y = Math.floor(v);
		if (y !== at) {
			if (y === at + 1) [upper, lower] = [lower, upper];
			else line(y, upper);
			line(y + 1, lower);
			at = y;
		}
		const t = eased(v - y);
		for (let k = 0; k < cells; k++) blended[k] = upper[k]! + (lower[k]! - upper[k]!) * t;
		for (let c = 0, i = r * width; c < width; c++, i++) {
			const a = blended[column[c]!]!;
			values[i] = a + (blended[column[c]! + 1]! - a) * between[c]!;
		}
	}
	return values;
}
