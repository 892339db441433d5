import { sheetView, type Reader } from '$lib/paper';
import type { App } from '../../app';
import { nameOf } from '../../shown-text';
import { today } from '../today';
import { printedLines } from './printed-lines';
import { revisionInForce, revisionsOf, sheetIn } from './revisions';

/**
 * One data sheet as a revision of it states it, with all its revisions.
 * @param wanted number of a revision; the one in force if left out, or the newest before the first day
 * @returns undefined where there is no such sheet or revision
 */
export const sheetPage = (app: App, id: string, wanted: number | null, reader: Reader) => {
	const revisions = revisionsOf(app, id);
	const holds = revisionInForce(app, id);
	const shown =
		wanted === null ? (holds ?? revisions.at(-1)) : revisions.find(({ revision }) => revision === wanted);
	if (!shown) return undefined;
	// a revision still to come is shown as on its first day
	const day = shown.effective > today(app) ? shown.effective : today(app);
	return {
		...sheetView(sheetIn(shown), day, reader),
		revision: shown.revision,
		lines: printedLines(sheetIn(shown), reader.lang),
		revisions: revisions
			.map(({ revision, effective, at, by, contentHash }) => ({
				revision,
				effective,
				at,
				by: nameOf(app, by, reader.lang),
				hash: contentHash,
				inForce: revision === holds?.revision
			}))
			.toReversed()
	};
};
