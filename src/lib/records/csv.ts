import { stringify } from 'csv-stringify/sync';
import { canonical } from './canonical';
import type { Entry } from './entry';

const COLUMNS = ['seq', 'at', 'actor', 'event', 'person', 'data', 'hash'] as const;

export interface CsvWording {
	/** Heading of each column, in the reader's language. */
	readonly headings: Readonly<Record<(typeof COLUMNS)[number], string>>;
	/** How a person is named: their name, or when it was erased. */
	readonly nameOf: (person: string) => string;
}

/**
 * The record as a table for a spreadsheet, a row an entry. Cells that a spreadsheet would take for a formula are
 * put in as text; the byte order mark keeps accents right where UTF-8 is not assumed.
 */
export function recordAsCsv(entries: readonly Entry[], { headings, nameOf }: CsvWording): string {
	const rows = entries.map((entry) => [
		entry.seq,
		entry.at,
		nameOf(entry.actor),
		entry.event,
		'person' in entry.data && typeof entry.data.person === 'string' ? nameOf(entry.data.person) : '',
		canonical(entry.data),
		entry.hash
	]);
	return stringify([COLUMNS.map((column) => headings[column]), ...rows], {
		bom: true,
		record_delimiter: 'windows',
		escape_formulas: true
	});
}
