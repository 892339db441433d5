import { stat } from 'node:fs/promises';
import { join } from 'node:path';
// by file, not by layer: this runs without Kit, which the server's door needs
import { verify } from '../lib/records/verify';
import { readJournalLines } from '../lib/server/journal-lines';

const folder = process.argv[2];
if (!folder) {
	console.error('usage: npm run verify:journal -- <data folder>');
	process.exit(2);
}

const path = join(folder, 'journal.jsonl');
await stat(path).catch(() => {
	console.error(`no journal at ${path}`);
	process.exit(2);
});

const { lines, torn } = await readJournalLines(path);
const result = verify(lines);
if (torn > 0)
	console.log(`an unfinished last line of ${torn} bytes was never acknowledged and is not counted`);
if (result.ok) {
	console.log(`entries   ${result.count}`);
	console.log(`last hash ${result.head}`);
	console.log(
		'The chain is whole. Compare the last hash with one printed on a signed sheet: only that shows a cut end.'
	);
} else {
	console.error(
		`line ${result.line} does not belong: ${result.why}${result.detail && ` (${result.detail})`}`
	);
	process.exitCode = 1;
}
