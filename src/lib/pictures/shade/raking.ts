import type { LampFor } from './lamp';

/** Drawn so much steeper than it is: an eye adapts to faint relief, a screen does not. */
const RELIEF = 4;

/** Sine, cosine and tangent of 8°, the height of the lamp above the panel. */
const SIN = 0.139173;
const COS = 0.990268;
const TAN = 0.140541;

/** A lamp lying at the left edge of the panel: every slope towards it flares, every bump throws a long shadow. */
export const raking: LampFor = ({ frame, height }) => {
	const shadow = new Uint8Array(height.length);
	const fall = (TAN * frame.pixel * 1000) / RELIEF;
	for (let r = 0, i = 0; r < frame.height; r++) {
		let horizon = -Infinity;
		for (let c = 0; c < frame.width; c++, i++) {
			horizon -= fall;
			const here = height[i]!;
			if (here < horizon - 1) shadow[i] = 1;
			else if (here > horizon) horizon = here;
		}
	}
	return (i, flatX, flatY, _x, _y, lit) => {
		const sx = flatX * RELIEF;
		const sy = flatY * RELIEF;
		const facing = shadow[i] ? 0 : Math.max(0, SIN + COS * sx) / Math.sqrt(1 + sx * sx + sy * sy);
		const bright = facing / SIN;
		// an eye takes in flares and shadows alike: halved at the flat film's brightness, never burnt out
		const seen = (2 * bright) / (1 + bright);
		lit.colour = seen * 0.55;
		// the lamp's glare is the colour of the lamp, so relief outweighs colour
		lit.shine = seen * 0.09;
	};
};
