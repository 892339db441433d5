import { pictureOf } from '../defects';
import { PANEL } from '../paint/frame';
import { noise, salted } from '../paint/noise';
import { focusOf, surfaceOf } from '../place';
import type { PictureRequest } from '../request';
import { MAGNIFICATION } from '../shade/loupe';
import { FILM } from '../surface';
import type { Cut } from './cut';

/** Samples along a section; as wide as what the loupe shows. */
const SAMPLES = 151;

/** Blasted profile, µm from mean to peak: a drawing aid, a third of the film from valley to peak. */
const PROFILE = 6;

/** Cuts the panel of a request through its specimen. Film and surface are the ones the other views show. */
export function cutSection(request: PictureRequest): Cut {
	const seed = request.seed | 0;
	const focus = focusOf(seed);
	const pixel = PANEL.width / MAGNIFICATION / SAMPLES;
	const left = focus.x - (SAMPLES * pixel) / 2;
	const frame = { width: SAMPLES, height: 1, left, top: focus.y - pixel / 2, pixel };
	const { height } = surfaceOf(request, frame);
	const ground = noise(frame, salted(seed, 900), 0.3).map((value) => value * PROFILE);
	const cut: Cut = {
		seed,
		x: Float32Array.from(height, (_, k) => (k + 0.5 - SAMPLES / 2) * pixel),
		ground,
		top: height.map((value, k) => Math.max(ground[k]!, FILM + value)),
		coat: undefined,
		bodies: []
	};
	if (request.defect !== 'sound') pictureOf(request.defect).under?.(cut, request.severity);
	return cut;
}
