import type { DefectPicture } from '../defect-picture';
import { crack } from '../section/cut';
import { tint } from '../paint/colours';
import { dome } from '../paint/profile';
import { stroke } from '../paint/stroke';
import { net } from '../paint/web';

/** Cracks in an oxide are paler than dyed film over it. */
const PALE = [0.5, 0.5, 0.48] as const;

/** A closed net of cracks in the oxide, seen through a film that is whole. */
export default {
	paint(surface, severity) {
		for (const line of net(surface, [6, 3.8, 2.6][severity - 1]!, 291, 0.6 + severity * 0.12)) {
			stroke(surface, line, 0.05, (i, off, share) => {
				tint(surface, i, PALE, 0.7 * dome(off) * share);
				surface.height[i]! -= 1.2 * dome(off) * share;
			});
		}
	},
	under(cut, severity) {
		const upper = [...cut.ground].map((y, k) => [cut.x[k]!, y] as const);
		const lower = upper.map(([x, y]) => [x, y - 12] as const).toReversed();
		cut.bodies.push({ kind: 'oxide', outline: [...upper, ...lower] });
		const mesh = [6, 3.8, 2.6][severity - 1]!;
		for (let k = -1; k <= 1; k++) {
			cut.bodies.push({ kind: 'crack', outline: crack(k * mesh, -14, 2, 0.08, cut.seed) });
		}
	}
} satisfies DefectPicture;
