import { spawnSync } from 'node:child_process';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { accept, endsAct, Journal } from '$lib/records';
import { JournalFile } from '$lib/server/journal-file';
import { readJournalLines } from '$lib/server/journal-lines';
import { tempFolder } from '../server/temp-folder';

const run = (...args: string[]) => {
	const { status, stdout, stderr } = spawnSync(
		process.execPath,
		['--import', 'tsx', 'src/scripts/verify-journal.ts', ...args],
		{ encoding: 'utf8' }
	);
	return { status, stdout, stderr };
};

async function journalOfThree(): Promise<{ folder: string; path: string; head: string }> {
	const folder = await tempFolder();
	const path = join(folder, 'journal.jsonl');
	const file = new JournalFile(path, endsAct);
	const journal = await Journal.open(file, {
		clock: () => new Date('2026-03-02T15:00:00Z'),
		requirements: { lessonsOf: () => ['a'], holdsSafetySkill: () => false }
	});
	for (const bytes of [1, 2, 3])
		await journal.act(() => accept({ event: 'journal.repaired', data: { bytes } }), 'program');
	file.close();
	return { folder, path, head: journal.head.hash };
}

it('prints entries and last hash of a whole journal', async () => {
	const { folder, head } = await journalOfThree();
	const { status, stdout } = run(folder);
	expect(status).toBe(0);
	expect(stdout).toMatch(/entries\s+3\n/);
	expect(stdout).toContain(head);
});

it('names the line that was edited by hand, and fails', async () => {
	const { folder, path } = await journalOfThree();
	const { lines } = await readJournalLines(path);
	lines[1] = lines[1]!.replace('"bytes":2', '"bytes":5');
	await writeFile(path, `${lines.join('\n')}\n`);
	const { status, stderr } = run(folder);
	expect(status).toBe(1);
	expect(stderr).toContain('line 2');
	expect(stderr).toContain('wrong-hash');
});

it('says what it needs, and that there is no journal', async () => {
	expect(run()).toMatchObject({ status: 2, stderr: expect.stringContaining('usage') });
	expect(run(await tempFolder())).toMatchObject({ status: 2, stderr: expect.stringContaining('no journal') });
});
