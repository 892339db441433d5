import { SHEET_FORMAT } from './format-tag';
import type { DataSheet } from './sheet';

/** A sheet as the text of a file that `importSheet` reads back to the same sheet. */
export const exportSheet = (sheet: DataSheet): string =>
	`${JSON.stringify({ format: SHEET_FORMAT, ...sheet }, null, '\t')}\n`;
