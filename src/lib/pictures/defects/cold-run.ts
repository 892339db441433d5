import type { DefectPicture } from '../defect-picture';
import { lens } from '../section/cut';
import { sag } from '../paint/sag';
import { noise, salted } from '../paint/noise';

/** The same tongues, come late: slack lips under a skin that had already begun to set. */
export default {
	paint(surface, severity) {
		sag(surface, severity, 18 + severity * 16, 1.1);
		const skin = noise(surface.frame, salted(surface.seed, 35), 0.5, 0.12);
		for (let i = 0; i < skin.length; i++) {
			surface.height[i]! += skin[i]! * Math.min(1, Math.max(0, surface.height[i]! / 30)) * 6;
		}
	},
	// what stayed soft under the skin while the oven warmed it
	under: (cut, severity) => cut.bodies.push({ kind: 'gel', outline: lens(0, 20, 1.2 + severity * 0.2, 14) })
} satisfies DefectPicture;
