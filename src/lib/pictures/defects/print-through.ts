import type { DefectPicture } from '../defect-picture';
import { grain, salted } from '../paint/noise';
import { over } from '../paint/over';
import { dome } from '../paint/profile';
import { stroke } from '../paint/stroke';
import { PANEL } from '../paint/frame';

/** Thread to thread of the cloth in a laminate, mm. */
const WEAVE = 1.6;

/** What is under the film shows through: the weave of a laminate, or straight scratches all one way. */
export default {
	paint(surface, severity) {
		const { seed, focus } = surface;
		const own = salted(seed, 281);
		if (grain(own, 1) < 0.5) {
			over(surface, (i, x, y) => {
				const u = (x - focus.x) / WEAVE;
				const v = (y - focus.y) / WEAVE;
				const warp = (Math.floor(u) + Math.floor(v)) & 1;
				const thread = warp ? u - Math.floor(u) - 0.5 : v - Math.floor(v) - 0.5;
				surface.height[i]! += (0.25 - thread * thread) * 9 * severity;
			});
			return;
		}
		for (let k = 0; k < 25 + severity * 35; k++) {
			const x = k === 0 ? focus.x - 4 : grain(own, k, 2) * PANEL.width * 1.2 - PANEL.width * 0.1;
			const y = k === 0 ? focus.y - 1 : grain(own, k, 3) * PANEL.height * 1.2 - PANEL.height * 0.1;
			const length = 6 + grain(own, k, 4) * 10;
			stroke(
				surface,
				[
					{ x, y },
					{ x: x + length, y: y + length * (0.25 + grain(own, k, 5) * 0.06) }
				],
				0.09,
				(i, off, share) => {
					surface.height[i]! -= (2 + severity * 2.5) * dome(off) * share;
				}
			);
		}
	},
	under({ ground, top }) {
		// a thin film follows what lies beneath it
		for (let k = 0; k < ground.length; k++) ground[k]! += (top[k]! - 35) * 1.6;
	}
} satisfies DefectPicture;
