import type { Surface } from '../surface';

/** Goes over every pixel with its place on the panel, mm. */
export function over({ frame }: Surface, each: (i: number, x: number, y: number) => void): void {
	const { width, height, left, top, pixel } = frame;
	for (let r = 0, i = 0; r < height; r++) {
		const y = top + (r + 0.5) * pixel;
		for (let c = 0; c < width; c++, i++) each(i, left + (c + 0.5) * pixel, y);
	}
}
