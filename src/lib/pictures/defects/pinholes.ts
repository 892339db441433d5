import type { DefectPicture } from '../defect-picture';
import { SHADOW, tint } from '../paint/colours';
import { clusters } from '../paint/scatter';
import { stamp } from '../paint/stamp';
import { step } from '../paint/profile';

/** Needle holes without a rim, down to the substrate. */
export default {
	paint(surface, severity) {
		for (const spot of clusters(surface, 3 + severity * 3, 4 + severity * 5, 6, 41)) {
			const radius = 0.09 + spot.size * 0.06;
			stamp(surface, spot.x, spot.y, radius, (i, r, share) => {
				const deep = step(1, 0.7, r) * share;
				surface.height[i]! -= 34 * deep;
				tint(surface, i, SHADOW, deep);
			});
		}
	}
} satisfies DefectPicture;
