import type { DefectPicture } from '../defect-picture';
import { lens } from '../section/cut';
import { RUST, tint } from '../paint/colours';
import { patches } from '../paint/patches';
import { dome } from '../paint/profile';
import { scatter } from '../paint/scatter';
import { stamp } from '../paint/stamp';

/** Orange freckles of all sizes, gathered in patches under a film that is whole over them. */
export default {
	paint(surface, severity) {
		const veil = patches(surface, 181, 8, 0.05 + severity * 0.12, 0.45);
		for (let i = 0; i < veil.length; i++) tint(surface, i, RUST, veil[i]! * (0.05 + 0.06 * severity));
		const { width, height, left, top, pixel } = surface.frame;
		for (const [k, spot] of scatter(surface, 150 + severity * 350, 182).entries()) {
			const column = Math.min(width - 1, Math.max(0, Math.floor((spot.x - left) / pixel)));
			const row = Math.min(height - 1, Math.max(0, Math.floor((spot.y - top) / pixel)));
			if (k > 0 && veil[row * width + column]! < 0.35) continue;
			const radius = 0.08 + spot.size * spot.size * 0.45;
			stamp(surface, spot.x, spot.y, radius, (i, r, share) => {
				tint(surface, i, RUST, 0.8 * dome(r) * share);
				surface.height[i]! += dome(r) * share;
			});
		}
	},
	under({ bodies }, severity) {
		for (let k = 0; k < severity * 3; k++) {
			bodies.push({ kind: 'rust', outline: lens((k % 2 ? 1 : -1) * k * 0.4, 1, 0.16 + (k % 3) * 0.1, 3) });
		}
	}
} satisfies DefectPicture;
