import type { DefectPicture } from '../defect-picture';
import { sheen, tint } from '../paint/colours';
import { noise, salted } from '../paint/noise';
import { over } from '../paint/over';
import { step } from '../paint/profile';

/** A matt, sandy belt of grains that were dry before they landed. */
export default {
	paint(surface, severity) {
		const { frame, seed, focus, film } = surface;
		const sand = noise(frame, salted(seed, 51), 0.35);
		const fine = noise(frame, salted(seed, 52), 0.14);
		const drift = noise(frame, salted(seed, 53), 9);
		const half = 3 + severity * 4;
		const coarse = [12, 22, 34][severity - 1]!;
		over(surface, (i, _x, y) => {
			const belt = step(half, half * 0.4, Math.abs(y - focus.y) + drift[i]! * 3);
			if (belt === 0) return;
			surface.height[i]! += (Math.max(0, sand[i]!) * 1.3 + Math.max(0, fine[i]!)) * coarse * belt;
			sheen(surface, i, 0.05, belt * 0.9);
			tint(
				surface,
				i,
				[film[0] + 0.2, film[1] + 0.2, film[2] + 0.2],
				belt * (0.08 + Math.max(0, sand[i]!) * 0.7)
			);
		});
	}
} satisfies DefectPicture;
