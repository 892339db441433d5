import type { DefectPicture } from '../defect-picture';
import { lens } from '../section/cut';
import { SHADOW, tint } from '../paint/colours';
import { noise, salted } from '../paint/noise';
import { dome, step } from '../paint/profile';
import { clusters } from '../paint/scatter';
import { stamp } from '../paint/stamp';

/** Little domes that burst, crowded where the film is thick. */
export default {
	paint(surface, severity) {
		const thick = noise(surface.frame, salted(surface.seed, 61), 14);
		for (let i = 0; i < thick.length; i++) surface.height[i]! += Math.max(0, thick[i]!) * 8 * severity;
		for (const spot of clusters(surface, 2 + severity, 8 + severity * 8, 4 + severity, 41)) {
			const radius = 0.14 + spot.size * 0.2;
			const burst = spot.turn > 0.25 || spot.size === 0.7;
			stamp(surface, spot.x, spot.y, radius, (i, r, share) => {
				surface.height[i]! += 26 * dome(r) * share;
				if (!burst) return;
				const hole = step(0.42, 0.26, r) * share;
				surface.height[i]! -= 45 * hole;
				tint(surface, i, SHADOW, hole * 0.8);
			});
		}
	},
	under(cut, severity) {
		for (let k = 0; k < severity * 2; k++) {
			cut.bodies.push({
				kind: 'void',
				outline: lens((k % 2 ? 1 : -1) * (0.7 + k * 0.45), 22 + (k % 3) * 4, 0.14, 6)
			});
		}
	}
} satisfies DefectPicture;
