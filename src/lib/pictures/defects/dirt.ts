import type { DefectPicture } from '../defect-picture';
import { shard } from '../section/cut';
import { tint } from '../paint/colours';
import { nibs } from '../paint/nibs';
import { grain, salted } from '../paint/noise';
import { dome, step } from '../paint/profile';
import { stamp } from '../paint/stamp';
import { stroke } from '../paint/stroke';
import { way } from '../paint/way';

/** Household dust, paler and browner than the film. */
const DUST = [0.3, 0.26, 0.2] as const;

/** Nibs under the film, dull and irregular, and a curved thread here and there. */
export default {
	paint(surface, severity) {
		const own = salted(surface.seed, 112);
		for (const [k, nib] of nibs(surface, severity).entries()) {
			stamp(surface, nib.x, nib.y, nib.radius, (i, r, share, dx, dy) => {
				const lumpy = 0.7 + 0.5 * grain(own, Math.round(dx * 3) + k * 9, Math.round(dy * 3));
				surface.height[i]! += 22 * dome(r) * lumpy * share;
				tint(surface, i, DUST, step(0.6, 0.3, r) * 0.8 * lumpy * share);
				surface.gloss[i]! *= 1 - 0.5 * dome(r);
			});
			if (k % 5 !== 0) continue;
			const thread = way(nib, nib.turn, 1.5 + nib.size * 2.5, 0.12, own + k, 14);
			stroke(surface, thread, 0.05, (i, off, share) => {
				surface.height[i]! += 14 * dome(off) * share;
				tint(surface, i, DUST, 0.6 * dome(off) * share);
			});
		}
	},
	under: ({ bodies, seed }) => bodies.push({ kind: 'particle', outline: shard(0, 34, 0.3, 13, seed) })
} satisfies DefectPicture;
