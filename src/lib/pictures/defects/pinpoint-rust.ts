import type { DefectPicture } from '../defect-picture';
import { lens } from '../section/cut';
import { RUST, tint } from '../paint/colours';
import { dome, step } from '../paint/profile';
import { scatter } from '../paint/scatter';
import { stamp } from '../paint/stamp';

/** Tiny rust dots of one size, as regular as the blast, each on a peak that breaks the film. */
export default {
	paint(surface, severity) {
		for (const spot of scatter(surface, [90, 260, 620][severity - 1]!, 191)) {
			stamp(surface, spot.x, spot.y, 0.32, (i, r, share) => {
				tint(surface, i, RUST, 0.6 * dome(r) * share);
				tint(surface, i, [RUST[0] * 0.6, RUST[1] * 0.5, RUST[2]], step(0.55, 0.35, r) * 0.9 * share);
				surface.height[i]! += 13 * dome(r * 1.6) * share;
			});
		}
	},
	under({ bodies, ground, top, x }, severity) {
		for (let k = -severity; k <= severity; k++) {
			const at = (k * 3) / severity;
			for (let n = 0; n < x.length; n++) ground[n]! += 34 * step(0.22, 0, Math.abs(x[n]! - at));
			bodies.push({ kind: 'rust', outline: lens(at, 38, 0.13, 6) });
		}
		for (let n = 0; n < x.length; n++) top[n] = Math.max(top[n]!, ground[n]!);
	}
} satisfies DefectPicture;
