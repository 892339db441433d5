import type { DefectPicture } from '../defect-picture';
import { lens } from '../section/cut';
import { tint } from '../paint/colours';
import { dome, ring, step } from '../paint/profile';
import { scatter } from '../paint/scatter';
import { stamp } from '../paint/stamp';
import { stroke } from '../paint/stroke';
import { way } from '../paint/way';

/** The job before was red. */
const OTHER = [0.45, 0.05, 0.04] as const;

/** Specks and streaks of another colour, some in a shallow crater. */
export default {
	paint(surface, severity) {
		for (const [k, speck] of scatter(surface, 8 + severity * 18, 241).entries()) {
			const radius = 0.25 + speck.size * 0.35;
			stamp(surface, speck.x, speck.y, radius * 1.4, (i, r, share) => {
				tint(surface, i, OTHER, step(0.72, 0.6, r) * 0.9 * share);
				surface.height[i]! += (6 * ring(r, 0.85, 0.25) - 7 * dome(r * 1.3)) * share;
			});
			if (k % (5 - severity) !== 1) continue;
			stroke(surface, way(speck, 0.5, 4 + speck.turn * 9, 0.02, surface.seed + k), 0.22, (i, off, share) => {
				tint(surface, i, OTHER, 0.6 * dome(off) * share);
			});
		}
	},
	under: ({ bodies }) => bodies.push({ kind: 'foreign', outline: lens(0, 22, 0.4, 7) })
} satisfies DefectPicture;
