import type { PictureId } from './defects';

/** How far a defect has gone: 1 slight, 2 plain to see, 3 severe. */
export type Severity = 1 | 2 | 3;

export const SEVERITIES: readonly Severity[] = [1, 2, 3];

/** Views that are shaded pixels. */
export type ShadedView = 'plain' | 'raking' | 'loupe';

/** Every way of looking: a section is lines, not pixels. */
export type View = ShadedView | 'section';

export const VIEWS: readonly View[] = ['plain', 'raking', 'loupe', 'section'];

/** What to draw. The same request is the same picture on any machine. */
export type PictureRequest = {
	/** A defect, or a film without one. */
	readonly defect: PictureId | 'sound';
	readonly severity: Severity;
	/** Any 32-bit integer: where things lie, how big each is, and which of the demo colours. */
	readonly seed: number;
	/** Sheen of the film around the defect, 0 (dead matt) to 1 (mirror). */
	readonly gloss?: number;
};
