import type { Lang } from '$lib/i18n';
import type { App } from '../../app';
import { today } from '../today';
import { entriesOfSheet } from './entries-of-sheet';
import { revisionsOf, sheetIn } from './revisions';
import { sheetForm } from './sheet-form';

/** The form for a new sheet. */
export const newSheetForm = (app: App, lang: Lang) => ({
	today: today(app),
	sheetForm: sheetForm(lang),
	entries: entriesOfSheet(null, { revision: 0, today: today(app), lang })
});

/** The form for the next revision of a sheet, filled with its newest; undefined where there is no such sheet. */
export const nextSheetForm = (app: App, id: string, lang: Lang) => {
	const newest = revisionsOf(app, id).at(-1);
	if (!newest) return undefined;
	const sheet = sheetIn(newest);
	return {
		today: today(app),
		title: sheet.title,
		sheetForm: sheetForm(lang),
		entries: entriesOfSheet(sheet, { revision: newest.revision, today: today(app), lang })
	};
};
