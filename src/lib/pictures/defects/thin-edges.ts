import type { DefectPicture } from '../defect-picture';
import { bare } from '../paint/colours';
import { fromEdge } from '../paint/edge';
import { noise, salted } from '../paint/noise';
import { over } from '../paint/over';
import { step } from '../paint/profile';

/** A ridge of the part runs down the panel; the film has drawn back from it and metal shines through. */
export default {
	paint(surface, severity) {
		const ragged = noise(surface.frame, salted(surface.seed, 101), 1.6);
		const line = 0.25 + severity * 0.35;
		over(surface, (i, x) => {
			surface.height[i]! += 60 * step(3, 0, Math.abs(x - surface.focus.x + 0.8));
		});
		fromEdge(surface, (i, inside) => {
			const off = Math.abs(inside) + ragged[i]! * 0.15;
			const thin = step(line * 1.6, line * 0.5, off);
			const height = surface.height[i]!;
			bare(surface, i, thin * (0.5 + severity * 0.16));
			// bare metal lies on the ridge, not on the plain
			surface.height[i] = height - 30 * thin;
		});
	},
	under(cut) {
		for (let k = 0; k < cut.x.length; k++) {
			cut.ground[k]! += 60 * step(3, 0, Math.abs(cut.x[k]! + 0.8));
			cut.top[k] = Math.max(cut.top[k]!, cut.ground[k]! + 3);
		}
	}
} satisfies DefectPicture;
