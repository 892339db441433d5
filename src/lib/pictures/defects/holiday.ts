import type { DefectPicture } from '../defect-picture';
import { bare } from '../paint/colours';
import { noise, salted } from '../paint/noise';
import { over } from '../paint/over';
import { step } from '../paint/profile';

/** A straight strip between two passes that hardly got any film. */
export default {
	paint(surface, severity) {
		const { frame, seed, focus } = surface;
		const ragged = noise(frame, salted(seed, 91), 1.2);
		const half = [0.6, 1.8, 4][severity - 1]!;
		over(surface, (i, x) => {
			const off = Math.abs(x - focus.x + half) + ragged[i]! * 0.5;
			bare(surface, i, step(half * 1.8, half * 0.6, off) * 0.92);
		});
	}
} satisfies DefectPicture;
