import type { DefectPicture } from '../defect-picture';
import { METAL, sheen, tint } from '../paint/colours';
import { fromEdge } from '../paint/edge';
import { noise, salted } from '../paint/noise';
import { step } from '../paint/profile';

/** To the left lay the tape: bare metal, with feathers of film that crept under the line. */
export default {
	paint(surface, severity) {
		const { frame, seed } = surface;
		const fingers = noise(frame, salted(seed, 211), 3, 0.9);
		const fine = noise(frame, salted(seed, 212), 1, 0.3);
		const reach = [0.7, 1.6, 3][severity - 1]!;
		fromEdge(surface, (i, inside) => {
			const crept = reach * (0.35 + fingers[i]! * 0.7 + fine[i]! * 0.25);
			const bared = step(-Math.max(0.02, crept), -Math.max(0.02, crept) - 0.25, inside);
			tint(surface, i, METAL, bared);
			sheen(surface, i, 0.4, bared);
			const thin = inside < 0 ? 12 : 0;
			surface.height[i]! += (-35 - surface.height[i]!) * bared - thin * (1 - bared);
		});
	}
} satisfies DefectPicture;
