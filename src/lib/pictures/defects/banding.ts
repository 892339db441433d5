import type { DefectPicture } from '../defect-picture';
import { SHADOW, sheen, tint } from '../paint/colours';
import { noise, salted } from '../paint/noise';
import { over } from '../paint/over';

/** Distance from pass to pass, mm: drawn small so that a panel shows several. */
const PITCH = 8;

/** Parallel stripes, thick and thin, shiny and dull, as far apart as the passes. */
export default {
	paint(surface, severity) {
		const { frame, seed, focus } = surface;
		const sway = noise(frame, salted(seed, 231), 40, 12);
		const grainy = noise(frame, salted(seed, 232), 0.4);
		over(surface, (i, _x, y) => {
			const phase = (y - focus.y) / PITCH + sway[i]! * 0.15;
			const to = Math.abs(phase - Math.round(phase)) * 2;
			const stripe = to * to * (3 - 2 * to);
			surface.height[i]! += (0.5 - stripe) * 5 * severity + grainy[i]! * stripe * severity;
			sheen(surface, i, 0.12, stripe * 0.28 * severity);
			tint(surface, i, SHADOW, (1 - stripe) * 0.11 * severity);
		});
	}
} satisfies DefectPicture;
