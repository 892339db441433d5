import type { Severity } from './request';
import type { Cut } from './section/cut';
import type { Surface } from './surface';

/** How one defect is drawn. */
export type DefectPicture = {
	/** What it does to height, colour and sheen of a sound film. One specimen lies at the focus. */
	readonly paint: (surface: Surface, severity: Severity) => void;
	/** What a section shows beneath the surface; the surface itself is cut as painted. */
	readonly under?: (cut: Cut, severity: Severity) => void;
};
