import { drawPicture, type PictureRequest, type ShadedView } from '$lib/pictures';
import { png } from './png';

/** A drawn panel as a PNG file, for who has no JavaScript to draw it. */
export const panelPng = (request: PictureRequest, view: ShadedView): Uint8Array<ArrayBuffer> =>
	png(drawPicture(request, view));
