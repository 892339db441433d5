import type { DefectPicture } from '../defect-picture';
import { bare } from '../paint/colours';
import { dome, ring, step } from '../paint/profile';
import { clusters } from '../paint/scatter';
import { stamp } from '../paint/stamp';

/** Round flat pits wider than deep, with a raised rim; the film has drawn back from the middle. */
export default {
	paint(surface, severity) {
		for (const spot of clusters(surface, 2 + severity * 2, 1 + severity, 9, 41)) {
			const radius = (0.3 + spot.size * 0.25) * (0.9 + severity * 0.16);
			stamp(surface, spot.x, spot.y, radius * 1.5, (i, r, share) => {
				const out = r * 1.5;
				surface.height[i]! += (ring(out, 1.12, 0.35) * 6 - 32 * step(1, 0.45, out)) * share;
				bare(surface, i, step(0.42, 0.3, out) * 0.6 * share);
				if (out < 1) surface.colour[i * 3 + 2]! *= 1 - 0.15 * dome(out);
			});
		}
	}
} satisfies DefectPicture;
