import type { DefectPicture } from '../defect-picture';
import { MILK, sheen, tint } from '../paint/colours';
import { noise, salted } from '../paint/noise';
import { patches } from '../paint/patches';
import { step } from '../paint/profile';
import { strip } from '../section/cut';

/** The same pale clouds, but lying on the film: grease that gathers into beads, and a track where a finger went. */
export default {
	paint(surface, severity) {
		const cloud = patches(surface, 121, 9, 0.1 + severity * 0.18, 0.5);
		const beads = noise(surface.frame, salted(surface.seed, 124), 0.3);
		const small = noise(surface.frame, salted(surface.seed, 125), 0.17);
		for (let i = 0; i < cloud.length; i++) {
			const bead = step(0.05, 0.5, beads[i]! + small[i]! * 0.6) * cloud[i]!;
			tint(surface, i, [MILK[0], MILK[1], MILK[2] * 0.82], cloud[i]! * (0.12 + severity * 0.1) + bead * 0.3);
			sheen(surface, i, 0.25, cloud[i]! * 0.7);
			surface.height[i]! += bead * (5 + severity * 2);
		}
	},
	under: ({ bodies }, severity) =>
		bodies.push({ kind: 'grease', outline: strip(-3.75, 3.75, 34, 36 + severity * 2) })
} satisfies DefectPicture;
