import type { FilmClass } from '$lib/engine';
import type { DerivationView } from '../derivation-view';

type Verdict = { readonly sign: 'inside' | 'near' | 'outside'; readonly text: string };

/** The film a gun lays, as plain data in the reader's words and units. Places run from 0 to 1 across the panel. */
export type FilmMapView = {
	readonly title: string;
	/** What the drawing shows, for who cannot see it. */
	readonly picture: string;
	readonly verdict: Verdict;
	/** How wet the drops land. */
	readonly landing: Verdict;
	readonly numbers: readonly { readonly id: string; readonly label: string; readonly value: string }[];
	/** Stripes of one class of film, from the first edge of the panel to the other. */
	readonly bands: readonly { readonly kind: FilmClass; readonly from: number; readonly to: number }[];
	/** Every class, thinnest first, with its share of the panel. */
	readonly classes: readonly { readonly kind: FilmClass; readonly label: string; readonly share: string }[];
	/** Middle of each stroke; below 0 and above 1 it runs past the panel. */
	readonly strokes: readonly number[];
	/** Film at even distances across the panel, as a share of the drawing's width. */
	readonly curve: readonly number[];
	/** Limits of the wanted film on the same scale, and what the whole width stands for. */
	readonly wanted: readonly [number, number];
	readonly widest: string;
	readonly readings: readonly { readonly at: string; readonly film: string; readonly stands: string }[];
	readonly derivations: readonly DerivationView[];
};
