import { type DefectId, type Degree } from '$lib/engine';
import { say } from '$lib/i18n';
import { describePicture, VIEWS, type View } from '$lib/pictures';
import type { Reader } from '$lib/paper';

/** A defect as it is drawn: the same seed is the same panel. */
export type DrawnPanel = { readonly defect: DefectId; readonly severity: Degree; readonly seed: number };

/** No wider than an address of a picture takes. */
const WIDEST = 1e9;

/** A panel in one way of looking at it: where its picture is, and what it shows for who cannot see it. */
export function panelAt({ defect, severity, seed }: DrawnPanel, view: View, reader: Reader) {
	const drawn = seed % WIDEST;
	const asked = new URLSearchParams({ defect, severity: String(severity), seed: String(drawn), view });
	return {
		view,
		src: `/${reader.lang}/panels?${asked}`,
		shows: say(describePicture({ defect, severity, seed: drawn }, view), reader.lang)
	};
}

/** The panel in every way of looking at it. */
export const panelViews = (panel: DrawnPanel, reader: Reader) =>
	VIEWS.map((view) => panelAt(panel, view, reader));
