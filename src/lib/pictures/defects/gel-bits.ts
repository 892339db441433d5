import type { DefectPicture } from '../defect-picture';
import { lens } from '../section/cut';
import { tint } from '../paint/colours';
import { nibs } from '../paint/nibs';
import { dome, step } from '../paint/profile';
import { stamp } from '../paint/stamp';

/** Clear, rounded lumps of the film's own colour, as glossy as the film. */
export default {
	paint(surface, severity) {
		const { film } = surface;
		for (const nib of nibs(surface, severity)) {
			stamp(surface, nib.x, nib.y, nib.radius, (i, r, share) => {
				surface.height[i]! += 26 * dome(r) * share;
				tint(surface, i, [film[0] * 1.35, film[1] * 1.35, film[2] * 1.35], step(1, 0.4, r) * 0.6 * share);
				surface.gloss[i]! += (0.9 - surface.gloss[i]!) * dome(r);
			});
		}
	},
	under: ({ bodies }) => bodies.push({ kind: 'gel', outline: lens(0, 38, 0.42, 17) })
} satisfies DefectPicture;
