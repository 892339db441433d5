import type { DefectPicture } from '../defect-picture';
import { strip } from '../section/cut';
import { bare } from '../paint/colours';
import { patches } from '../paint/patches';
import { step } from '../paint/profile';

/** Torn patches where the whole film came off and left clean metal; the film stands up around them. */
export default {
	paint(surface, severity) {
		const off = patches(surface, 81, 3 + severity * 2, severity * 0.13 - 0.1, 0.04);
		for (let i = 0; i < off.length; i++) {
			const at = off[i]!;
			surface.height[i]! += 16 * step(0, 0.2, at) * step(0.5, 0.3, at);
			bare(surface, i, step(0.45, 0.55, at));
		}
	},
	// the film beside the patch has let go as well
	under: (cut) => cut.bodies.push({ kind: 'gap', outline: strip(2.4, 3.75, 5, 11) })
} satisfies DefectPicture;
