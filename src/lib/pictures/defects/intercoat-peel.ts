import type { DefectPicture } from '../defect-picture';
import { FILM } from '../surface';
import { sheen, tint } from '../paint/colours';
import { patches } from '../paint/patches';
import { step } from '../paint/profile';

/** The lower coat takes this share of the film. */
const LOWER = 0.5;

/** Torn patches where the top coat came off and the lower one stayed, whole and shiny. */
export default {
	paint(surface, severity) {
		const off = patches(surface, 81, 3 + severity * 2, severity * 0.13 - 0.1, 0.04);
		for (let i = 0; i < off.length; i++) {
			const at = off[i]!;
			surface.height[i]! += 12 * step(0, 0.2, at) * step(0.5, 0.3, at);
			const gone = step(0.45, 0.55, at);
			// a lower coat is often the paler one: grey of the same darkness as blasted metal
			tint(surface, i, [0.4, 0.4, 0.38], gone);
			sheen(surface, i, 0.85, gone);
			surface.height[i]! += (-FILM * (1 - LOWER) - surface.height[i]!) * gone;
		}
	},
	under(cut) {
		cut.coat = cut.top.map((top) => Math.min(top, FILM * LOWER));
	}
} satisfies DefectPicture;
