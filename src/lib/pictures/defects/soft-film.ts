import type { DefectPicture } from '../defect-picture';
import { sheen } from '../paint/colours';
import { dome, ring } from '../paint/profile';
import { scatter } from '../paint/scatter';
import { stamp } from '../paint/stamp';
import { stroke } from '../paint/stroke';
import { salted } from '../paint/noise';
import { way } from '../paint/way';

/** Dents of a nail with a pushed-up rim, and dulled drags where a cloth went. */
export default {
	paint(surface, severity) {
		const own = salted(surface.seed, 161);
		for (const [k, dent] of scatter(surface, 2 + severity * 3, 162).entries()) {
			stamp(
				surface,
				dent.x,
				dent.y,
				0.5 + dent.size * 0.3,
				(i, r, share) => {
					surface.height[i]! += (7 * ring(r, 0.8, 0.2) - (6 + severity * 6) * dome(r * 1.3)) * share;
				},
				3
			);
			if (k % 2) continue;
			stroke(surface, way({ x: dent.x + 3, y: dent.y }, dent.turn * 0.1, 9, 0.02, own + k), 2.2, (i, off) => {
				sheen(surface, i, 0.12, dome(off) * (0.2 + severity * 0.25));
			});
		}
	}
} satisfies DefectPicture;
