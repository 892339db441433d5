import type { DefectPicture } from '../defect-picture';
import { sag } from '../paint/sag';

/** Tongues that ran while the film was wet: a full lip, a sharp lower edge. */
export default {
	paint: (surface, severity) => sag(surface, severity, 20 + severity * 18, 0.7)
} satisfies DefectPicture;
