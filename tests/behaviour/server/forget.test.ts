import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openApp } from '$lib/server/app';
import { fillDemoShop } from '$lib/server/demo';
import { forget } from '$lib/server/forget';
import { readSettings } from '$lib/server/settings';
import { nameOf } from '$lib/server/shown-text';
import { CHEAP } from './cheap-scrypt';
import { tempFolder } from './temp-folder';

const open = (folder: string) => openApp(readSettings({ DATA_DIR: folder }), { scryptCost: CHEAP });

describe('forgetting a person', () => {
	it('erases name and secret and leaves the record sound', async () => {
		const folder = await tempFolder();
		const app = await open(folder);
		await fillDemoShop(app);
		expect((await forget(app, 'demo-trainee', 'demo-lead')).ok).toBe(true);
		expect(nameOf(app, 'demo-trainee', 'en')).toMatch(/^erased on /);
		expect(app.secrets.has('demo-trainee')).toBe(false);
		expect(await readFile(join(folder, 'texts.json'), 'utf8')).not.toContain('Okoro');
		await app.close();
		const again = await open(folder);
		expect(again.journal.fault).toBeNull();
		await again.close();
	});

	it('is finished at the next start when a power cut came in between', async () => {
		const folder = await tempFolder();
		const app = await open(folder);
		await fillDemoShop(app);
		const before = await readFile(join(folder, 'texts.json'), 'utf8');
		await forget(app, 'demo-trainee', 'demo-lead');
		await app.close();
		await writeFile(join(folder, 'texts.json'), before);

		const again = await open(folder);
		expect(nameOf(again, 'demo-trainee', 'en')).toMatch(/^erased on /);
		expect(await readFile(join(folder, 'texts.json'), 'utf8')).not.toContain('Okoro');
		await again.close();
	});

	it('is done by a lead only', async () => {
		const app = await open(await tempFolder());
		await fillDemoShop(app);
		expect(await forget(app, 'demo-trainee', 'demo-supervisor')).toMatchObject({ ok: false });
		expect(nameOf(app, 'demo-trainee', 'en')).toBe('Nia Okoro');
		expect(app.secrets.has('demo-trainee')).toBe(true);
		await app.close();
	});
});
