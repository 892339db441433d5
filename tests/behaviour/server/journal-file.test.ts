import { Low } from 'lowdb';
import { appendFile, mkdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { accept, endsAct, Journal, verify } from '$lib/records';
import { JournalFile } from '$lib/server/journal-file';
import { readJournalLines } from '$lib/server/journal-lines';
import { tempFolder } from './temp-folder';

const surroundings = {
	clock: () => new Date('2026-03-02T15:00:00Z'),
	requirements: { lessonsOf: () => ['a'], holdsSafetySkill: () => false }
};
const note = (bytes: number) => () => accept({ event: 'journal.repaired' as const, data: { bytes } });

const openLow = async (path: string) => {
	const file = new JournalFile(path, () => true);
	const low = new Low<string[]>(file, []);
	await low.read();
	return { file, low, close: () => file.close() };
};

describe('a journal file', () => {
	it('appends only what is new, into the same file, and reads it back', async () => {
		const path = join(await tempFolder(), 'sub', 'journal.jsonl');
		const { low, close } = await openLow(path);
		expect(low.data).toEqual([]);
		await low.update((lines) => lines.push('one'));
		const { ino } = await stat(path);
		await low.update((lines) => lines.push('two µ', 'three'));
		expect(await readFile(path, 'utf8')).toBe('one\ntwo µ\nthree\n');
		expect((await stat(path)).ino).toBe(ino);
		await low.write();
		expect(await readFile(path, 'utf8')).toBe('one\ntwo µ\nthree\n');
		close();
		const again = await openLow(path);
		expect(again.low.data).toEqual(['one', 'two µ', 'three']);
		expect(again.file.cutBytes).toBe(0);
		again.close();
	});

	it('is private to its owner', async () => {
		const path = join(await tempFolder(), 'journal.jsonl');
		const { low, close } = await openLow(path);
		await low.update((lines) => lines.push('one'));
		if (process.platform !== 'win32') expect((await stat(path)).mode & 0o077).toBe(0);
		close();
	});

	it('takes no change to what is kept, no removal, and no line break', async () => {
		const path = join(await tempFolder(), 'journal.jsonl');
		const { low, close } = await openLow(path);
		await low.update((lines) => lines.push('one', 'two'));
		low.data[1] = 'other';
		await expect(low.write()).rejects.toThrow('changed or removed');
		low.data.length = 1;
		await expect(low.write()).rejects.toThrow('changed or removed');
		low.data = ['one', 'two', 'th\nree'];
		await expect(low.write()).rejects.toThrow('no line break');
		expect(await readFile(path, 'utf8')).toBe('one\ntwo\n');
		low.data = ['one', 'two', 'three'];
		await low.write();
		expect(await readFile(path, 'utf8')).toBe('one\ntwo\nthree\n');
		close();
	});

	it('has one writer at a time', async () => {
		const path = join(await tempFolder(), 'journal.jsonl');
		const first = await openLow(path);
		await expect(openLow(path)).rejects.toThrow('in use');
		first.close();
		(await openLow(path)).close();
	});

	it('writes nothing once somebody else wrote into the file', async () => {
		const path = join(await tempFolder(), 'journal.jsonl');
		const { low, close } = await openLow(path);
		await low.update((lines) => lines.push('one'));
		await appendFile(path, 'foreign\n');
		await expect(low.update((lines) => lines.push('two'))).rejects.toThrow('changed by another program');
		expect(await readFile(path, 'utf8')).toBe('one\nforeign\n');
		close();
	});
});

describe('a torn end', () => {
	it('is cut off, counted, and appending goes on behind what was whole', async () => {
		const path = join(await tempFolder(), 'journal.jsonl');
		await writeFile(path, 'µ one\n{"half a li');
		const { low, file, close } = await openLow(path);
		expect(low.data).toEqual(['µ one']);
		expect(file.cutBytes).toBe(11);
		expect(await readFile(path, 'utf8')).toBe('µ one\n');
		await low.update((lines) => lines.push('two'));
		expect(await readFile(path, 'utf8')).toBe('µ one\ntwo\n');
		close();
	});

	it('may be all there is', async () => {
		const path = join(await tempFolder(), 'journal.jsonl');
		await writeFile(path, '{"half');
		const { low, file, close } = await openLow(path);
		expect([low.data, file.cutBytes]).toEqual([[], 6]);
		close();
	});

	it('takes the rest of its act with it, so that no act is half in the record', async () => {
		const path = join(await tempFolder(), 'journal.jsonl');
		const file = new JournalFile(path, endsAct);
		const journal = await Journal.open(file, surroundings);
		await journal.act(note(1), 'program');
		await journal.act(() => accept(...note(2)().events, ...note(3)().events), 'program');
		file.close();
		const whole = await readFile(path);
		const firstLine = whole.indexOf(0x0a) + 1;

		for (let size = firstLine; size < whole.length; size += 1) {
			await writeFile(path, whole.subarray(0, size));
			const torn = new JournalFile(path, endsAct);
			const again = await Journal.open(torn, surroundings);
			expect([again.entries.length, torn.cutBytes, again.fault]).toEqual([1, size - firstLine, null]);
			torn.close();
		}
		expect(await readFile(path)).toEqual(whole.subarray(0, firstLine));
	});
});

describe('a disk that refuses', () => {
	/** Lets a call on every open file fail once; the rest goes to the disk as ever. */
	const failOnce = async (path: string, method: 'sync' | 'appendFile') => {
		const { open } = await import('node:fs/promises');
		const probe = await open(path, 'a');
		const prototype = Object.getPrototypeOf(probe);
		await probe.close();
		return vi.spyOn(prototype, method).mockRejectedValueOnce(new Error('no space left'));
	};

	it.each(['sync', 'appendFile'] as const)('leaves nothing behind when %s fails', async (method) => {
		const path = join(await tempFolder(), 'journal.jsonl');
		const file = new JournalFile(path, endsAct);
		const journal = await Journal.open(file, surroundings);
		await journal.act(note(1), 'program');
		const before = await readFile(path, 'utf8');
		const failing = await failOnce(path, method);
		await expect(journal.act(note(2), 'program')).rejects.toThrow('no space left');
		failing.mockRestore();
		expect(await readFile(path, 'utf8')).toBe(before);
		expect(journal.entries).toHaveLength(1);

		expect((await journal.act(note(3), 'program')).ok).toBe(true);
		const { lines } = await readJournalLines(path);
		expect(lines.map((line) => JSON.parse(line).data.bytes)).toEqual([1, 3]);
		expect(verify(lines).ok).toBe(true);
		file.close();
	});

	it('begins the next write with what could not be taken back', async () => {
		const path = join(await tempFolder(), 'journal.jsonl');
		const { low, close } = await openLow(path);
		await low.update((lines) => lines.push('one'));
		const sync = await failOnce(path, 'sync');
		const { open } = await import('node:fs/promises');
		const probe = await open(path, 'a');
		const truncate = vi
			.spyOn(Object.getPrototypeOf(probe), 'truncate')
			.mockRejectedValueOnce(new Error('still no'));
		await probe.close();
		low.data.push('two');
		await expect(low.write()).rejects.toThrow('neither written nor taken back');
		low.data.pop();
		sync.mockRestore();
		truncate.mockRestore();
		await low.update((lines) => lines.push('three'));
		expect(await readFile(path, 'utf8')).toBe('one\nthree\n');
		close();
	});

	it('a folder that is gone is an error, not an empty journal', async () => {
		const folder = join(await tempFolder(), 'data');
		await mkdir(folder);
		const { low, close } = await openLow(join(folder, 'journal.jsonl'));
		await rm(folder, { recursive: true });
		await expect(low.update((lines) => lines.push('one'))).rejects.toThrow('ENOENT');
		close();
	});
});

it('40 acts at once are all on disk, in order, when they are acknowledged', async () => {
	const path = join(await tempFolder(), 'journal.jsonl');
	const file = new JournalFile(path, endsAct);
	const journal = await Journal.open(file, surroundings);
	await Promise.all(
		Array.from({ length: 40 }, async (_, i) => {
			const outcome = await journal.act(note(i + 1), 'program');
			if (!outcome.ok) throw new Error(outcome.refusal.code);
			const { lines } = await readJournalLines(path);
			expect(lines.map((line) => JSON.parse(line).hash)).toContain(outcome.entries[0]!.hash);
		})
	);
	const { lines } = await readJournalLines(path);
	expect(lines.map((line) => JSON.parse(line).data.bytes)).toEqual(
		Array.from({ length: 40 }, (_, i) => i + 1)
	);
	expect(verify(lines)).toEqual({ ok: true, count: 40, head: journal.head.hash });
	file.close();
});
