import type { LampFor } from './lamp';

/** Mirrored light moves by twice the slope, over the metre to the lamp, against a panel some 40 mm high. */
const SWING = 24;

/** A long soft lamp overhead, seen mirrored in the film: gloss, haze and colour show; relief only where it is steep. */
export const plain: LampFor = ({ gloss }) => {
	return (i, sx, sy, x, y, lit) => {
		const length = Math.sqrt(1 + sx * sx + sy * sy);
		lit.colour = Math.max(0, 0.25 * sx + 0.3 * sy + 0.92) / length;
		const sharp = gloss[i]!;
		const width = 0.3 + (1 - sharp) * 0.9;
		const away = (y + 0.35 * x - 0.4 + SWING * (sy + 0.35 * sx)) / width;
		lit.shine = (sharp * 0.09 + 0.015) / ((1 + away * away) * width);
	};
};
