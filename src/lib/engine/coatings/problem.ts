import type { Text } from '../text';
import type { DataSheet } from './sheet';

/** One thing wrong with a data sheet: where (`lines.dry-film.0.max`, empty for the whole) and what, in plain words. */
export type SheetProblem = { readonly path: string; readonly text: Text };

export type CheckedSheet =
	| { readonly ok: true; readonly sheet: DataSheet }
	| { readonly ok: false; readonly problems: readonly SheetProblem[] };
