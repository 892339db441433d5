import type { DefectPicture } from '../defect-picture';
import { noise, salted } from '../paint/noise';
import { patches } from '../paint/patches';

/** A skin shrunk into fine folds, like a prune's. */
export default {
	paint(surface, severity) {
		const { frame, seed } = surface;
		const where = patches(surface, 261, 12, 0.15 + severity * 0.22, 0.25);
		const folds = noise(frame, salted(seed, 263), 2.4);
		const cross = noise(frame, salted(seed, 264), 1.3);
		const high = 10 + severity * 9;
		for (let i = 0; i < folds.length; i++) {
			// sharp valleys between round folds: where the noise passes zero
			const fold = Math.min(Math.abs(folds[i]!) * 2.2, Math.abs(cross[i]!) * 2.2 + 0.25, 1);
			surface.height[i]! += where[i]! * (fold - 0.3) * high;
			surface.gloss[i]! *= 1 - where[i]! * 0.3;
		}
	}
} satisfies DefectPicture;
