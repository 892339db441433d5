import { appendFile, readdir, readFile, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openApp } from '$lib/server/app';
import { found } from '$lib/server/found';
import { recordNotices } from '$lib/server/record-notices';
import { readSettings } from '$lib/server/settings';
import { nameOf } from '$lib/server/shown-text';
import { shopName } from '$lib/server/shop-name';
import { CHEAP } from './cheap-scrypt';
import { tempFolder } from './temp-folder';

const open = (folder: string) => openApp(readSettings({ DATA_DIR: folder }), { scryptCost: CHEAP });

const FOUNDING = {
	lead: 'p1',
	leadName: 'Ana Ferrer',
	shopName: 'Line Nine',
	timeZone: 'America/Chicago',
	lang: 'en',
	secret: 'seven grey masks',
	demo: false
} as const;

describe('the app of a data folder', () => {
	it('finds everything again after a new start', async () => {
		const folder = await tempFolder();
		const first = await open(folder);
		expect((await found(first, FOUNDING)).ok).toBe(true);
		await first.close();

		const second = await open(folder);
		expect(shopName(second, 'en')).toBe('Line Nine');
		expect(nameOf(second, 'p1', 'es')).toBe('Ana Ferrer');
		expect(await second.secrets.verify('p1', 'seven grey masks')).toBe(true);
		expect(second.cookieKey.equals(first.cookieKey)).toBe(true);
		expect(second.journal.head).toEqual(first.journal.head);
		expect(recordNotices(second, 'en')).toEqual([]);
		await second.close();
	});

	it('keeps name and secret out of the journal, and every file to its owner', async () => {
		const folder = await tempFolder();
		const app = await open(folder);
		await found(app, FOUNDING);
		const journal = await readFile(join(folder, 'journal.jsonl'), 'utf8');
		for (const word of ['Ana', 'Ferrer', 'Line Nine', 'masks']) expect(journal).not.toContain(word);
		await app.close();
		const files = await readdir(folder);
		expect(files.sort()).toEqual(['cookie.key', 'journal.jsonl', 'secrets.json', 'texts.json']);
		for (const file of files) expect((await stat(join(folder, file))).mode & 0o077, file).toBe(0);
	});

	it('is opened by one program at a time', async () => {
		const folder = await tempFolder();
		const app = await open(folder);
		await expect(open(folder)).rejects.toThrow('in use by another program');
		await app.close();
		await (await open(folder)).close();
	});

	it('lets go of the folder when it cannot open', async () => {
		const folder = await tempFolder();
		await writeFile(join(folder, 'secrets.json'), 'half a fi');
		await expect(open(folder)).rejects.toThrow('damaged');
		await expect(open(folder)).rejects.toThrow('damaged');
	});

	it('says so when the end of the journal was torn, here and in the journal', async () => {
		const folder = await tempFolder();
		const first = await open(folder);
		await found(first, FOUNDING);
		await first.close();
		await appendFile(join(folder, 'journal.jsonl'), '{"v":1,"seq"');

		const second = await open(folder);
		expect(second.repairedBytes).toBe(12);
		expect(second.journal.entries.at(-1)).toMatchObject({ event: 'journal.repaired', data: { bytes: 12 } });
		expect(recordNotices(second, 'en')).toMatchObject([{ tone: 'info' }]);
		await second.close();
	});

	it('opens for reading only when a line was edited, and says which', async () => {
		const folder = await tempFolder();
		const first = await open(folder);
		await found(first, FOUNDING);
		await first.close();
		const path = join(folder, 'journal.jsonl');
		const lines = (await readFile(path, 'utf8')).split('\n');
		lines[1] = lines[1]!.replace('"lead"', '"auditor"');
		await writeFile(path, lines.join('\n'));

		const second = await open(folder);
		expect(second.journal.fault?.line).toBe(2);
		expect(recordNotices(second, 'en')[0]?.text).toContain('Line 2');
		expect(await found(second, FOUNDING)).toMatchObject({ ok: false, refusal: { code: 'journal-broken' } });
		await second.close();
	});
});

describe('founding the shop', () => {
	it('leaves nothing behind when it is refused', async () => {
		const folder = await tempFolder();
		const app = await open(folder);
		const nowhere = { ...FOUNDING, timeZone: 'Mars/Olympus' };
		expect(await found(app, nowhere)).toMatchObject({ ok: false });
		expect(app.secrets.has('p1')).toBe(false);
		expect(await readFile(join(folder, 'texts.json'), 'utf8')).not.toContain('Ana');
		expect(app.journal.head.count).toBe(0);
		await app.close();
	});

	it('happens once', async () => {
		const app = await open(await tempFolder());
		await found(app, FOUNDING);
		const again = await found(app, { ...FOUNDING, lead: 'p2' });
		expect(again).toMatchObject({ ok: false, refusal: { code: 'already-founded' } });
		expect(app.secrets.has('p1')).toBe(true);
		expect(app.secrets.has('p2')).toBe(false);
		await app.close();
	});
});
