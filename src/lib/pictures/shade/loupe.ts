import type { LampFor } from './lamp';

/** How many times closer the loupe is than the plain view. */
export const MAGNIFICATION = 8;

/** Drawn so much steeper than it is, as the raking view is. */
const RELIEF = 3;

/** A loupe with its lamp up to the left at about 45°: shape, rims and what lies at the bottom of a hole. */
export const loupe: LampFor = ({ gloss }) => {
	return (i, flatX, flatY, _x, _y, lit) => {
		const sx = flatX * RELIEF;
		const sy = flatY * RELIEF;
		const length = Math.sqrt(1 + sx * sx + sy * sy);
		lit.colour = Math.max(0.05, 0.5 * sx + 0.5 * sy + 0.75) / length;
		const sharp = gloss[i]!;
		const ox = sx - 0.3;
		const oy = sy - 0.3;
		const tight = 4 + sharp * 60;
		lit.shine = (0.03 + sharp * 0.9) / (1 + tight * (ox * ox + oy * oy)) + sharp * 0.02;
	};
};
