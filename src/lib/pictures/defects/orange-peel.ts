import type { DefectPicture } from '../defect-picture';
import { noise, salted } from '../paint/noise';

/** A skin of round hills, millimetres apart, smooth and as glossy as ever. */
export default {
	paint(surface, severity) {
		const hills = noise(surface.frame, salted(surface.seed, 21), 1.9);
		const broad = noise(surface.frame, salted(surface.seed, 22), 3.6);
		const high = [1.6, 3.5, 7][severity - 1]!;
		for (let i = 0; i < hills.length; i++) surface.height[i]! += (hills[i]! + broad[i]! * 0.5) * high;
	}
} satisfies DefectPicture;
