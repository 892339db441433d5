import { mkdtempSync } from 'node:fs';
import { appendFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bench, describe } from 'vitest';
import { Low } from 'lowdb';
import { JournalFile } from '../../src/lib/server/journal-file';

const folder = mkdtempSync(join(tmpdir(), 'bench-'));
const file = new JournalFile(join(folder, 'journal.jsonl'), () => true);
const low = new Low<string[]>(file, []);
await low.read();
const line = JSON.stringify({ seq: 1, text: 'x'.repeat(400) });

/* What fsync costs against an append that the disk may still lose. */
describe('one line', () => {
	bench('appended and synced', async () => {
		await low.update((lines) => lines.push(line));
	});
	bench('appended, not synced', async () => {
		await appendFile(join(folder, 'plain.jsonl'), `${line}\n`);
	});
});
