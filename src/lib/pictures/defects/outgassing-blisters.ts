import type { DefectPicture } from '../defect-picture';
import { lens } from '../section/cut';
import { bare } from '../paint/colours';
import { grain } from '../paint/noise';
import { dome, step } from '../paint/profile';
import { scatter } from '../paint/scatter';
import { stamp } from '../paint/stamp';

/** The casting is the same for every part of the job, and so are its pores. */
const CASTING = 7411;

/** Domes and small volcanoes over the pores of the part: the same places on each. */
export default {
	paint(surface, severity) {
		const pores = scatter({ seed: CASTING, focus: surface.focus }, 8 + severity * 12, 71);
		for (const [k, pore] of pores.entries()) {
			const radius = 0.3 + pore.size * 0.35 * severity;
			const open = k === 0 || grain(CASTING, k, 3) < 0.4;
			stamp(surface, pore.x, pore.y, radius, (i, r, share) => {
				surface.height[i]! += (14 + 26 * pore.size) * dome(r) * share;
				if (!open) return;
				const crater = step(0.24, 0.1, r) * share;
				surface.height[i]! -= 50 * crater;
				bare(surface, i, step(0.16, 0.08, r) * share * 0.6);
			});
		}
	},
	under: (cut, severity) =>
		cut.bodies.push(
			{ kind: 'void', outline: lens(0, 14, 0.1 + severity * 0.05, 18) },
			{ kind: 'void', outline: lens(0, -14, 0.16, 14) },
			{ kind: 'void', outline: lens(1.9, -10, 0.12, 9) }
		)
} satisfies DefectPicture;
