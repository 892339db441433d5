import type { DefectPicture } from '../defect-picture';
import { bare } from '../paint/colours';
import { ring, step } from '../paint/profile';
import { stamp } from '../paint/stamp';
import { stroke } from '../paint/stroke';

/** Where the hook touched: a bare dot with a lip of film, and the thin shadow of the wire above it. */
export default {
	paint(surface, severity) {
		const { focus } = surface;
		const radius = 0.6 + severity * 0.5;
		const wire = [
			focus,
			{ x: focus.x, y: focus.y - 6 },
			{ x: focus.x + 2, y: focus.y - 9 },
			{ x: focus.x + 5, y: focus.y - 9 }
		];
		stroke(surface, wire, 0.5 + severity * 0.15, (i, off) => {
			bare(surface, i, step(1, 0.5, off) * (0.12 + severity * 0.16));
		});
		stamp(surface, focus.x, focus.y, radius * 1.4, (i, r) => {
			const out = r * 1.4;
			surface.height[i]! += 12 * ring(out, 1.1, 0.25);
			bare(surface, i, step(1, 0.85, out));
		});
	}
} satisfies DefectPicture;
