import type { DefectPicture } from '../defect-picture';
import { crack } from '../section/cut';
import { tint } from '../paint/colours';
import { dome } from '../paint/profile';
import { scatter } from '../paint/scatter';
import { stroke } from '../paint/stroke';
import { forks } from '../paint/web';

/** Cracks in clear plastic mirror the light. */
const SILVER = [0.75, 0.77, 0.8] as const;

/** Silvery hair cracks in the plastic itself, running the same way from where it is stressed; the film over them is whole. */
export default {
	paint(surface, severity) {
		const { focus } = surface;
		const starts = scatter(surface, 6 + severity * 12, 251).map((spot) => ({
			// crowded around the stressed place
			x: focus.x + (spot.x - focus.x) * 0.5,
			y: focus.y + (spot.y - focus.y) * 0.5
		}));
		for (const line of forks(surface, starts, 4 + severity * 1.5, 0.03, 252)) {
			stroke(surface, line, 0.04, (i, off, share) => {
				tint(surface, i, SILVER, 0.75 * dome(off) * share);
				surface.height[i]! -= 1.5 * dome(off) * share;
			});
		}
	},
	under(cut, severity) {
		for (let k = 0; k < 2 + severity * 2; k++) {
			cut.bodies.push({ kind: 'crack', outline: crack((k % 2 ? 1 : -1) * k * 0.5, -55, -3, 0.04, cut.seed) });
		}
	}
} satisfies DefectPicture;
