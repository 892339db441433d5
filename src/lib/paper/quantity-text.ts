import { format, formatWindow, unitFor, type Dimension } from '$lib/engine';
import type { Reader } from './reader';

/** SI value with the unit this reader is shown. */
export const quantityText = (value: number, dimension: Dimension, { lang, units }: Reader) =>
	format(value, dimension, unitFor(value, dimension, units), lang);

/** Limits in SI as this reader is shown them; an infinite limit is none. */
export function windowText(
	window: { readonly min: number; readonly max: number; readonly open?: boolean },
	dimension: Dimension,
	{ lang, units }: Reader
) {
	const decides = Number.isFinite(window.max) ? window.max : window.min;
	return formatWindow(window, dimension, unitFor(decides, dimension, units), lang);
}
