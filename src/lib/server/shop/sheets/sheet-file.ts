import { exportSheet } from '$lib/engine';
import type { App } from '../../app';
import { revisionsOf, sheetIn } from './revisions';

/**
 * A data sheet as a file in our own format.
 * @param wanted number of a revision; the newest if left out
 * @returns undefined where there is no such sheet or revision
 */
export const sheetFile = (app: App, id: string, wanted: number | null) => {
	const revisions = revisionsOf(app, id);
	const found = wanted === null ? revisions.at(-1) : revisions.find(({ revision }) => revision === wanted);
	return found && { name: `${id}-${found.revision}.json`, text: exportSheet(sheetIn(found)) };
};
