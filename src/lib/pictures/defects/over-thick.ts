import type { DefectPicture } from '../defect-picture';
import { SHADOW, tint } from '../paint/colours';
import { over } from '../paint/over';
import { PANEL } from '../paint/frame';
import { dome, step } from '../paint/profile';

/** A bore in the panel: film has rounded its rim and narrowed it, and lies dark in the corner. */
export default {
	paint(surface, severity) {
		const { focus } = surface;
		const bore = 6;
		const middle = { x: focus.x + bore, y: focus.y };
		const swell = 0.5 + severity * 0.5;
		const build = [15, 35, 65][severity - 1]!;
		over(surface, (i, x, y) => {
			const out =
				Math.sqrt((x - middle.x) * (x - middle.x) + (y - middle.y) * (y - middle.y)) - bore + swell * 0.5;
			const hole = step(0.1, -0.1, out);
			const corner = step(5, 0, PANEL.height - y);
			surface.height[i]! += build * (0.6 + 0.5 * dome(Math.abs(out - swell) / (swell * 1.2)) + corner * 0.3);
			tint(
				surface,
				i,
				SHADOW,
				Math.min(0.6, 0.08 * severity + corner * 0.12 * severity + 0.2 * dome(Math.abs(out) / swell))
			);
			surface.height[i]! += (-120 - surface.height[i]!) * hole;
			tint(surface, i, SHADOW, hole);
			surface.gloss[i]! *= 1 - hole;
		});
	},
	under({ x, ground, top }) {
		// in the bore there is neither part nor film
		for (let k = 0; k < x.length; k++) {
			const hole = step(-0.2, 0.2, x[k]!);
			const open = top[k]! - ground[k]! < 1;
			ground[k]! -= 120 * hole;
			if (open) top[k] = ground[k]!;
		}
	}
} satisfies DefectPicture;
