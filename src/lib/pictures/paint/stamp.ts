import type { Surface } from '../surface';

/** What a stamp does to a pixel: its index, the distance from the middle in radii, how much of the pixel it covers. */
export type Touch = (i: number, r: number, share: number, dx: number, dy: number) => void;

/**
 * Goes over the pixels of a round spot. A spot smaller than a pixel still touches that pixel, for its share of it.
 *
 * @param radius mm, more than 0
 * @param slim how many times longer than wide, at least 1, lying along y
 */
export function stamp(
	{ frame }: Surface,
	x: number,
	y: number,
	radius: number,
	touch: Touch,
	slim = 1
): void {
	const { width, height, left, top, pixel } = frame;
	const seen = Math.max(radius, pixel * 0.75);
	const share = (radius / seen) * (radius / seen);
	const tall = seen * slim;
	const c0 = Math.max(0, Math.floor((x - seen - left) / pixel));
	const c1 = Math.min(width - 1, Math.ceil((x + seen - left) / pixel));
	const r0 = Math.max(0, Math.floor((y - tall - top) / pixel));
	const r1 = Math.min(height - 1, Math.ceil((y + tall - top) / pixel));
	for (let row = r0; row <= r1; row++) {
		const dy = (top + (row + 0.5) * pixel - y) / tall;
		for (let column = c0; column <= c1; column++) {
			const dx = (left + (column + 0.5) * pixel - x) / seen;
			const r = Math.sqrt(dx * dx + dy * dy);
			if (r < 1) touch(row * width + column, r, share, dx, dy);
		}
	}
}
