import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { holdAlone } from '$lib/server/one-writer';
import { tempFolder } from './temp-folder';

const journalIn = (folder: string) => join(folder, 'journal.jsonl');
const lockIn = (folder: string) => `${journalIn(folder)}.lock`;
const hold = (folder: string) => holdAlone(journalIn(folder));

/** The lock this process would write, with some of it changed. */
const otherLock = async (changes: Record<string, unknown>): Promise<string> => {
	const folder = await tempFolder();
	const { release } = hold(folder);
	const own = JSON.parse(await readFile(lockIn(folder), 'utf8'));
	release();
	return JSON.stringify({ ...own, ...changes });
};

describe('the only writer of a journal', () => {
	it('keeps a second one out until it lets go, and leaves nothing behind', async () => {
		const folder = await tempFolder();
		const { release } = hold(folder);
		expect(() => hold(folder)).toThrow(`process ${process.pid} on ${hostname()}`);
		release();
		expect(await readdir(folder)).toEqual([]);
		hold(folder).release();
	});

	it('is not another program that is still running', async () => {
		const folder = await tempFolder();
		const other = spawn(process.execPath, ['-e', 'setInterval(() => {}, 1000)']);
		try {
			await writeFile(lockIn(folder), await otherLock({ pid: other.pid }));
			expect(() => hold(folder)).toThrow(`process ${other.pid} on`);
		} finally {
			other.kill('SIGKILL');
			await once(other, 'exit');
		}
		hold(folder).release();
	});

	it('takes over from a program that is gone, or that had our pid before us', async () => {
		const gone = spawnSync(process.execPath, ['-e', '0']).pid;
		for (const pid of [gone, process.pid]) {
			const folder = await tempFolder();
			await writeFile(lockIn(folder), await otherLock({ pid }));
			hold(folder).release();
		}
	});

	it('takes over after a restart of the PC even if the pid is in use again', async () => {
		const folder = await tempFolder();
		await writeFile(lockIn(folder), await otherLock({ pid: process.ppid, boot: 'an earlier start' }));
		hold(folder).release();
	});

	it('does not guess about another PC or a damaged lock', async () => {
		const folder = await tempFolder();
		await writeFile(lockIn(folder), await otherLock({ pid: 999_999, host: 'another-pc' }));
		expect(() => hold(folder)).toThrow('on another-pc');
		await writeFile(lockIn(folder), 'half a li');
		expect(() => hold(folder)).toThrow('damaged');
	});
});
