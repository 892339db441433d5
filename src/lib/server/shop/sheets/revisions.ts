import type { DataSheet } from '$lib/engine';
import { inForce, type SheetRevision } from '$lib/records';
import type { App } from '../../app';
import { today } from '../today';

/** The sheet a revision holds; it was found valid before it was entered. */
export const sheetIn = ({ content }: SheetRevision): DataSheet => content as unknown as DataSheet;

/** Every revision of a sheet in the order saved; none for an id that is no sheet's. */
export const revisionsOf = ({ journal }: Pick<App, 'journal'>, sheet: string): readonly SheetRevision[] =>
	journal.state.shop.sheets.get(sheet) ?? [];

/** The revision of a sheet that holds today; undefined before its first day. */
export const revisionInForce = (app: App, sheet: string): SheetRevision | undefined =>
	inForce(app.journal.state.shop, today(app)).sheets.find((each) => each.sheet === sheet);
