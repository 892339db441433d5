import type { DefectPicture } from '../defect-picture';
import { lens } from '../section/cut';
import { MILK, sheen, tint } from '../paint/colours';
import { patches } from '../paint/patches';

/** Milky clouds: water that fell out inside the film while it was wet. */
export default {
	paint(surface, severity) {
		const cloud = patches(surface, 121, 9, 0.1 + severity * 0.18, 0.5);
		for (let i = 0; i < cloud.length; i++) {
			tint(surface, i, MILK, cloud[i]! * (0.14 + severity * 0.11));
			sheen(surface, i, 0.2, cloud[i]! * 0.8);
		}
	},
	under({ bodies }, severity) {
		for (let k = 0; k < 6 + severity * 5; k++) {
			bodies.push({
				kind: 'haze',
				outline: lens(-3.4 + ((k * 13) % 29) * 0.24, 22 + ((k * 5) % 8), 0.05, 2)
			});
		}
	}
} satisfies DefectPicture;
