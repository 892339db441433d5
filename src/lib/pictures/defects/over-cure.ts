import type { DefectPicture } from '../defect-picture';
import { crack } from '../section/cut';
import { SHADOW, tint } from '../paint/colours';
import { dome } from '../paint/profile';
import { scatter } from '../paint/scatter';
import { stroke } from '../paint/stroke';
import { forks } from '../paint/web';

/** Dark, forking cracks through a film that has browned. */
export default {
	paint(surface, severity) {
		const { colour } = surface;
		for (let k = 0; k < colour.length; k += 3) {
			colour[k]! *= 1 - 0.04 * severity;
			colour[k + 1]! *= 1 - 0.1 * severity;
			colour[k + 2]! *= 1 - 0.16 * severity;
		}
		for (const line of forks(surface, scatter(surface, 3 + severity * severity * 4, 171), 7, 0.1, 172)) {
			stroke(surface, line, 0.035 + severity * 0.015, (i, off, share) => {
				surface.height[i]! -= 30 * dome(off) * share;
				tint(surface, i, SHADOW, 0.9 * dome(off) * share);
			});
		}
	},
	under(cut, severity) {
		for (let k = 0; k < 1 + severity; k++) {
			cut.bodies.push({ kind: 'crack', outline: crack(k % 2 ? k : -k * 0.9, 4, 38, 0.06, cut.seed) });
		}
	}
} satisfies DefectPicture;
