import type { Surface } from '../surface';
import type { LampFor, Lit } from './lamp';
import { tone } from './tone';

/** A picture as canvas and PNG want it: red, green, blue, opacity, row by row. */
export type Raster = { readonly width: number; readonly height: number; readonly rgba: Uint8ClampedArray };

/** Lights a surface and looks at it from above. */
export function shade(surface: Surface, lampFor: LampFor): Raster {
	const { frame, height, colour } = surface;
	const { width, height: rows, pixel } = frame;
	const lamp = lampFor(surface);
	const rgba = new Uint8ClampedArray(width * rows * 4);
	const lit: Lit = { colour: 0, shine: 0 };
	const perMicrometre = 1 / (1000 * pixel);
	for (let r = 0, i = 0; r < rows; r++) {
		const above = r > 0 ? width : 0;
		const below = r < rows - 1 ? width : 0;
		for (let c = 0; c < width; c++, i++) {
			const before = c > 0 ? 1 : 0;
			const after = c < width - 1 ? 1 : 0;
			const sx = ((height[i + after]! - height[i - before]!) * perMicrometre) / (before + after || 1);
			const sy = ((height[i + below]! - height[i - above]!) * perMicrometre) / (above && below ? 2 : 1);
			lamp(i, sx, sy, c / width, r / rows, lit);
			const k = i * 4;
			rgba[k] = tone(colour[i * 3]! * lit.colour + lit.shine);
			rgba[k + 1] = tone(colour[i * 3 + 1]! * lit.colour + lit.shine);
			rgba[k + 2] = tone(colour[i * 3 + 2]! * lit.colour + lit.shine);
			rgba[k + 3] = 255;
		}
	}
	return { width, height: rows, rgba };
}
