import type { DefectPicture } from '../defect-picture';
import { FILM } from '../surface';
import { over } from '../paint/over';
import { dome, step } from '../paint/profile';

/** How the part itself bends under a sound film: a wave across the face and a sink beside the focus. */
const bend = (dx: number, dy: number, severity: number): number => {
	const wave = step(0, 0.5, Math.abs(dx / 14 - Math.round(dx / 14)));
	const sink = dome(Math.sqrt(dx * dx + dy * dy) / 5);
	return severity * (22 * (1 - wave) - 40 * sink);
};

/** Sound film on a part that bowed and sank. */
export default {
	paint(surface, severity) {
		const { focus } = surface;
		over(surface, (i, x, y) => {
			surface.height[i]! += bend(x - focus.x, y - focus.y, severity);
		});
	},
	under({ x, ground, top }, severity) {
		const whole = bend(0, 0, severity);
		for (let k = 0; k < x.length; k++) {
			// the section is drawn from where the part lies, so that film and part bend together
			ground[k]! += bend(x[k]!, 0, severity) - whole;
			top[k] = FILM + bend(x[k]!, 0, severity) - whole;
		}
	}
} satisfies DefectPicture;
