import type { Place, Surface } from '../surface';

/** What a stroke does to a pixel: its index, 0 on the line to 1 at its side, how much of the pixel it covers. */
export type Along = (i: number, off: number, share: number) => void;

/**
 * Goes over the pixels along a broken line. A line thinner than a pixel touches it for its share.
 *
 * @param half half the width, mm, more than 0
 */
export function stroke({ frame }: Surface, line: readonly Place[], half: number, along: Along): void {
	const { width, height, left, top, pixel } = frame;
	const seen = Math.max(half, pixel * 0.6);
	const share = half / seen;
	for (let k = 1; k < line.length; k++) {
		const [a, b] = [line[k - 1]!, line[k]!];
		const [dx, dy] = [b.x - a.x, b.y - a.y];
		const length2 = dx * dx + dy * dy || 1e-9;
		const c0 = Math.max(0, Math.floor((Math.min(a.x, b.x) - seen - left) / pixel));
		const c1 = Math.min(width - 1, Math.ceil((Math.max(a.x, b.x) + seen - left) / pixel));
		const r0 = Math.max(0, Math.floor((Math.min(a.y, b.y) - seen - top) / pixel));
		const r1 = Math.min(height - 1, Math.ceil((Math.max(a.y, b.y) + seen - top) / pixel));
		for (let row = r0; row <= r1; row++) {
			const py = top + (row + 0.5) * pixel - a.y;
			for (let column = c0; column <= c1; column++) {
				const px = left + (column + 0.5) * pixel - a.x;
				const on = (px * dx + py * dy) / length2;
				// the piece before has been here with its round end
				if (on < 0 && k > 1) continue;
				const t = Math.min(1, Math.max(0, on));
				const ox = px - t * dx;
				const oy = py - t * dy;
				const off = Math.sqrt(ox * ox + oy * oy) / seen;
				if (off < 1) along(row * width + column, off, share);
			}
		}
	}
}
