import type { DefectPicture } from '../defect-picture';
import { MILK, sheen, tint } from '../paint/colours';
import { noise, salted } from '../paint/noise';
import { dome, step } from '../paint/profile';
import { scatter } from '../paint/scatter';
import { stamp } from '../paint/stamp';

/** A dull oval as large as a fingertip, ridged like skin. */
export default {
	paint(surface, severity) {
		const { frame, seed } = surface;
		const wander = noise(frame, salted(seed, 201), 5);
		for (const print of scatter(surface, severity, 202)) {
			stamp(
				surface,
				print.x,
				print.y,
				6,
				(i, r, _share, dx, dy) => {
					const oval = step(1, 0.8, r);
					// loops around a core below the middle, about two ridges to a millimetre
					const lx = dx * 6;
					const ly = dy * 8.4 - 2.5;
					const phase = Math.sqrt(lx * lx + ly * ly * 0.5) * 1.8 + wander[i]! * 1.2;
					const ridge = dome(Math.abs(phase - Math.floor(phase) - 0.5) * 2.2);
					const strength = oval * (0.4 + severity * 0.2);
					sheen(surface, i, 0.1, strength * ridge);
					tint(surface, i, MILK, strength * ridge * 0.28);
					surface.height[i]! -= strength * ridge * 1.6;
				},
				1.4
			);
		}
	}
} satisfies DefectPicture;
