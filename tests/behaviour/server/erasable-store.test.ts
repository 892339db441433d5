import { createHash } from 'node:crypto';
import { readFile, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ErasableStore } from '$lib/server/erasable-store';
import { tempFolder } from './temp-folder';

const fresh = async () => join(await tempFolder(), 'sub', 'texts.json');

describe('names and free text', () => {
	it('come back from disk as they were typed', async () => {
		const path = await fresh();
		const ref = await (await ErasableStore.open(path)).put('Núñez «el zurdo» \n 漆', 'es');
		const again = await ErasableStore.open(path);
		expect(again.read(ref)).toEqual({ state: 'kept', text: 'Núñez «el zurdo» \n 漆', lang: 'es' });
	});

	it('are bound to the record by a salted hash', async () => {
		const path = await fresh();
		const store = await ErasableStore.open(path);
		const [one, two] = [await store.put('same words', 'en'), await store.put('same words', 'en')];
		expect(one.hash).not.toBe(two.hash);
		const kept = JSON.parse(await readFile(path, 'utf8')).texts[one.text];
		expect(
			createHash('sha256')
				.update(kept.salt + kept.text)
				.digest('hex')
		).toBe(one.hash);
		expect(kept.salt).toMatch(/^[0-9a-f]{32}$/);
	});

	it('show when they were altered behind the record', async () => {
		const path = await fresh();
		const ref = await (await ErasableStore.open(path)).put('refused: film too thin', 'en');
		await writeFile(path, (await readFile(path, 'utf8')).replace('refused', 'accepted'));
		expect((await ErasableStore.open(path)).read(ref)).toEqual({ state: 'altered' });
	});

	it('stay private to their owner and survive being put at once', async () => {
		const path = await fresh();
		const store = await ErasableStore.open(path);
		const refs = await Promise.all(Array.from({ length: 20 }, (_, i) => store.put(`text ${i}`, 'en')));
		const again = await ErasableStore.open(path);
		expect(refs.map((ref) => again.read(ref))).toEqual(
			refs.map((_, i) => ({ state: 'kept', text: `text ${i}`, lang: 'en' }))
		);
		if (process.platform !== 'win32') expect((await stat(path)).mode & 0o077).toBe(0);
	});
});

describe('erasing', () => {
	it('leaves the day and nothing else, salt included', async () => {
		const path = await fresh();
		const store = await ErasableStore.open(path);
		const [gone, stays] = [await store.put('Ana Example', 'es'), await store.put('Ben Example', 'en')];
		const { salt } = JSON.parse(await readFile(path, 'utf8')).texts[gone.text];
		await store.erase(new Map([[gone.text, '2026-05-04']]));
		for (const each of [store, await ErasableStore.open(path)]) {
			expect(each.read(gone)).toEqual({ state: 'erased', on: '2026-05-04' });
			expect(each.read(stays)).toMatchObject({ state: 'kept' });
		}
		const content = await readFile(path, 'utf8');
		expect(content).not.toContain('Ana');
		expect(content).not.toContain(salt);
	});

	it('is done once: the first day stands, and an unknown text is no error', async () => {
		const path = await fresh();
		const store = await ErasableStore.open(path);
		const ref = await store.put('Ana Example', 'es');
		await store.erase(new Map([[ref.text, '2026-05-04']]));
		const { mtimeMs } = await stat(path);
		await store.erase(
			new Map([
				[ref.text, '2026-06-01'],
				['unknown', '2026-06-01']
			])
		);
		expect(store.read(ref)).toEqual({ state: 'erased', on: '2026-05-04' });
		expect((await stat(path)).mtimeMs).toBe(mtimeMs);
	});

	it('is not the same as dropping a text whose act was refused', async () => {
		const store = await ErasableStore.open(await fresh());
		const ref = await store.put('never entered', 'en');
		await store.drop([ref.text]);
		expect(store.read(ref)).toEqual({ state: 'missing' });
	});
});

it('does not start on a damaged file, and leaves it as it is', async () => {
	const path = join(await tempFolder(), 'texts.json');
	for (const damaged of ['{"version":1,"texts":{"a":', '{"version":1,"texts":{"a":{"text":"x"}}}', '[]']) {
		await writeFile(path, damaged);
		await expect(ErasableStore.open(path)).rejects.toThrow('damaged');
		expect(await readFile(path, 'utf8')).toBe(damaged);
	}
});

it('keeps the old texts when the disk refuses the new', async () => {
	const path = await fresh();
	const store = await ErasableStore.open(path);
	const ref = await store.put('kept', 'en');
	await expect(store.put('x', 'en').then(() => store.read(ref))).resolves.toMatchObject({ text: 'kept' });
	const broken = new Map([[ref.text, '2026-05-04']]);
	const { mkdir } = await import('node:fs/promises');
	await mkdir(`${path}.next`); // the new file cannot be written where a folder is
	await expect(store.erase(broken)).rejects.toThrow('EISDIR');
	expect(store.read(ref)).toMatchObject({ state: 'kept' });
});
