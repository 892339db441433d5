import { join } from 'node:path';
import { record, type Lang } from '$lib/i18n';
import { verify, type LineFault } from '$lib/records';
import type { App } from '../app';
import { readJournalLines } from '../journal-lines';
import { entryView } from './entry-view';

/** The file and what is held in memory, taken so close together that no entry came between. */
async function bothSides({ settings, journal }: App) {
	for (;;) {
		const before = journal.head;
		const file = await readJournalLines(join(settings.dataFolder, 'journal.jsonl'));
		if (before.count === journal.head.count) return { file, held: before };
	}
}

/** Checks the journal file on the disk line by line and against what the program shows. */
export async function verifyFile(app: App, lang: Lang) {
	const { file, held } = await bothSides(app);
	const found = verify(file.lines);
	const why: Readonly<Record<LineFault, string>> = record[lang].why;
	const repairs = app.journal.entries
		.filter(({ event }) => event === 'journal.repaired')
		.map((entry) => entryView(app, entry, lang));
	return {
		torn: file.torn,
		lines: file.lines.length,
		held,
		fault: found.ok ? null : { line: found.line, why: why[found.why], detail: found.detail },
		whole: found.ok ? { count: found.count, head: found.head } : null,
		agrees: found.ok && found.count === held.count && found.head === held.hash,
		repairs
	};
}
