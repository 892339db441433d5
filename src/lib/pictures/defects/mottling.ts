import type { DefectPicture } from '../defect-picture';
import { SHADOW, sheen, tint } from '../paint/colours';
import { noise, salted } from '../paint/noise';

/** Clouds of darker and lighter, duller and shinier, with no direction. */
export default {
	paint(surface, severity) {
		const clouds = noise(surface.frame, salted(surface.seed, 131), 16);
		const small = noise(surface.frame, salted(surface.seed, 132), 6);
		for (let i = 0; i < clouds.length; i++) {
			const at = clouds[i]! + small[i]! * 0.4;
			tint(
				surface,
				i,
				at > 0 ? [0.5, 0.5, 0.5] : SHADOW,
				Math.min(1, Math.abs(at)) * (at > 0 ? 0.06 : 0.2) * severity
			);
			sheen(surface, i, at > 0 ? 0.9 : 0.2, Math.min(1, Math.abs(at)) * 0.2 * severity);
		}
	}
} satisfies DefectPicture;
