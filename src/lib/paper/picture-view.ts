import { say, type Lang } from '$lib/i18n';
import { describePicture, panelAddress, type PictureRequest, type View } from '$lib/pictures';

/** One way of looking at a drawn panel: where its picture is, and what it shows for who cannot see it. */
export type PictureView = { readonly view: View; readonly src: string; readonly shows: string };

/** Seeds of nine digits are as wide as an address takes. */
const WIDEST = 1e9;

/** A panel in one way of looking at it, by an address that names its defect. */
export function pictureView(panel: Omit<PictureRequest, 'gloss'>, view: View, lang: Lang): PictureView {
	const drawn = { ...panel, seed: panel.seed % WIDEST };
	return { view, src: panelAddress(drawn, view, lang), shows: say(describePicture(drawn, view), lang) };
}
