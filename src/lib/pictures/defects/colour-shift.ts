import type { DefectPicture } from '../defect-picture';
import { noise, salted } from '../paint/noise';
import { over } from '../paint/over';
import { PANEL } from '../paint/frame';

/** The whole face browner, most where the part is thin and ran hottest. */
export default {
	paint(surface, severity) {
		const { frame, seed, colour } = surface;
		const uneven = noise(frame, salted(seed, 151), 30);
		over(surface, (i, x) => {
			const much = (0.12 + 0.14 * severity) * (0.6 + 0.6 * (x / PANEL.width) + uneven[i]! * 0.1);
			colour[i * 3]! += (colour[i * 3]! * 1.3 + 0.05 - colour[i * 3]!) * much;
			colour[i * 3 + 1]! *= 1 - 0.2 * much;
			colour[i * 3 + 2]! *= 1 - 0.75 * much;
		});
	}
} satisfies DefectPicture;
