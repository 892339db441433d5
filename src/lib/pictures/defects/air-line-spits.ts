import type { DefectPicture } from '../defect-picture';
import { grain, salted } from '../paint/noise';
import { dome, ring, step } from '../paint/profile';
import { stamp } from '../paint/stamp';
import { PANEL } from '../paint/frame';

/** Single large drops in a row along one pass of the gun, each with a ring splashed around it. */
export default {
	paint(surface, severity) {
		const { seed, focus, film } = surface;
		const own = salted(seed, 271);
		const count = 1 + severity * 2;
		for (let k = 0; k < count; k++) {
			const x = k === 0 ? focus.x : (PANEL.width * (k - 0.5 + grain(own, k) * 0.6)) / (count - 1);
			const y = focus.y + (k === 0 ? 0 : (grain(own, k, 2) - 0.5) * 2.5);
			const radius = 0.8 + grain(own, k, 3) * 0.5 * severity;
			stamp(surface, x, y, radius * 1.7, (i, r) => {
				const out = r * 1.7;
				surface.height[i]! += 16 * ring(out, 1, 0.3) - 14 * dome(out) + 5 * ring(out, 1.5, 0.15);
				const wet = step(1, 0.8, out);
				surface.gloss[i]! += (0.95 - surface.gloss[i]!) * wet * 0.8;
				for (let c = 0; c < 3; c++)
					surface.colour[i * 3 + c]! += (film[c]! * 0.6 - surface.colour[i * 3 + c]!) * wet * 0.7;
			});
		}
	}
} satisfies DefectPicture;
