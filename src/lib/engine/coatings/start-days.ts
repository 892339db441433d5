import type { DataSheet, IsoDate } from './sheet';

/** All days on which a number of the sheet changes, in order; the first is the day the sheet starts. */
export const startDays = (sheet: DataSheet): IsoDate[] =>
	[
		...new Set(Object.values(sheet.lines).flatMap((revisions = []) => revisions.map(({ from }) => from)))
	].sort();
