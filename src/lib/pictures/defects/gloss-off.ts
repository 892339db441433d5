import type { DefectPicture } from '../defect-picture';
import { grain, noise, salted } from '../paint/noise';

/** The whole face evenly too shiny or too dull, and smooth. */
export default {
	paint(surface, severity) {
		const shiny = grain(salted(surface.seed, 141), 1) < 0.5;
		const grains = noise(surface.frame, salted(surface.seed, 142), 0.1);
		for (let i = 0; i < surface.gloss.length; i++) {
			const to = shiny ? 1 : 0.02;
			surface.gloss[i]! += (to - surface.gloss[i]!) * (0.25 + severity * 0.25);
			if (!shiny) surface.height[i]! += grains[i]! * severity * 0.4;
		}
	}
} satisfies DefectPicture;
