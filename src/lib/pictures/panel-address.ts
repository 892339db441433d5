import type { PictureRequest, View } from './request';

/**
 * Where a drawn panel is looked at in one way. The address names the defect; the gloss is the defect's own.
 * @param seed a whole number from 0 of nine digits at most
 */
export function panelAddress(
	{ defect, severity, seed }: Omit<PictureRequest, 'gloss'>,
	view: View,
	lang: string
): string {
	const asked = new URLSearchParams({ defect, severity: String(severity), seed: String(seed), view });
	return `/${lang}/panels?${asked}`;
}
