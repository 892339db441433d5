import { PANEL, type Frame } from './paint/frame';
import { grain, salted } from './paint/noise';
import { pictureOf } from './defects';
import { MAGNIFICATION } from './shade/loupe';
import type { PictureRequest } from './request';
import { soundFilm, type Place, type Surface } from './surface';

/** Sheen of a film nobody has said anything about: satin. */
const SATIN = 0.6;

/** Where the specimen lies: near the middle, elsewhere for every seed. */
export const focusOf = (seed: number): Place => ({
	x: PANEL.width * (0.4 + 0.2 * grain(salted(seed, 1), 1)),
	y: PANEL.height * (0.4 + 0.2 * grain(salted(seed, 1), 2))
});

/** The whole piece of panel in so many pixels across. */
export const wholePanel = (width: number): Frame => ({
	width,
	height: Math.round((width * PANEL.height) / PANEL.width),
	left: 0,
	top: 0,
	pixel: PANEL.width / width
});

/** The loupe's piece of it, around the specimen, drawn afresh with its finer detail. */
export function closeUp(width: number, seed: number): Frame {
	const { height } = wholePanel(width);
	const pixel = PANEL.width / MAGNIFICATION / width;
	const { x, y } = focusOf(seed);
	return { width, height, left: x - (width * pixel) / 2, top: y - (height * pixel) / 2, pixel };
}

/** The surface a request asks for, through a frame. */
export function surfaceOf({ defect, severity, seed, gloss = SATIN }: PictureRequest, frame: Frame): Surface {
	const surface = soundFilm(frame, seed | 0, focusOf(seed | 0), gloss);
	if (defect !== 'sound') pictureOf(defect).paint(surface, severity);
	return surface;
}
