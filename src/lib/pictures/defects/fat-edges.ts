import type { DefectPicture } from '../defect-picture';
import { SHADOW, tint } from '../paint/colours';
import { over } from '../paint/over';
import { PANEL } from '../paint/frame';
import { dome, step } from '../paint/profile';

/** A thick, darker bead along the part's edges, as even along the top as along the sides. */
export default {
	paint(surface, severity) {
		const { focus } = surface;
		const half = 0.6 + severity * 0.5;
		const high = 12 + severity * 14;
		const bottom = Math.min(PANEL.height - 3, focus.y + 14);
		over(surface, (i, x, y) => {
			const inside = Math.min(x - focus.x + 1.6, bottom - y);
			surface.height[i]! += high * dome(Math.abs(inside - half) / (half * 1.3));
			tint(surface, i, SHADOW, 0.3 * dome(Math.abs(inside - half) / (half * 1.3)));
			const beyond = step(0, -0.15, inside);
			tint(surface, i, SHADOW, beyond);
			surface.gloss[i]! *= 1 - beyond;
			surface.height[i]! += (-35 - surface.height[i]!) * beyond;
		});
	}
} satisfies DefectPicture;
