import { record, type Lang } from '$lib/i18n';
import { dayOf, recordAsCsv } from '$lib/records';
import type { App } from '../app';
import { actorName } from './actor-name';
import { shownEntry } from './shown-data';

/** The whole record as a table for a spreadsheet, with the name of its file. */
export function recordCsv(app: App, lang: Lang): { name: string; content: string } {
	const { entries, state } = app.journal;
	const shown = entries.map((entry) => shownEntry(state, entry, record[lang].withheldMark));
	return {
		name: `record-${dayOf(state, app.now().toISOString())}.csv`,
		content: recordAsCsv(shown, {
			headings: record[lang].columns,
			nameOf: (person) => actorName(app, person, lang)
		})
	};
}
