import { readdir, readFile, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { hashSecret, matchesSecret, SCRYPT_COST } from '$lib/server/scrypt';
import { openSecrets } from '$lib/server/secrets';
import { CHEAP } from './cheap-scrypt';
import { tempFolder } from './temp-folder';

describe('a kept secret', () => {
	it('is recognised, and nothing near it is', async () => {
		const kept = await hashSecret('blue oven door seven', CHEAP);
		expect(await matchesSecret('blue oven door seven', kept)).toBe(true);
		for (const near of ['', 'blue oven door seve', 'blue oven door seven ', 'Blue oven door seven'])
			expect(await matchesSecret(near, kept)).toBe(false);
	});

	it('has a salt of its own and carries the work it was made with', async () => {
		const [one, other] = [await hashSecret('2580', CHEAP), await hashSecret('2580', SCRYPT_COST)];
		expect(one.salt).not.toBe(other.salt);
		expect(one.hash).not.toBe(other.hash);
		expect(other).toMatchObject({ algorithm: 'scrypt', n: 32768, r: 8, p: 3 });
		expect(await matchesSecret('2580', one)).toBe(true);
		expect(await matchesSecret('2580', other)).toBe(true);
	});

	it('does not depend on how a keyboard writes an accent', async () => {
		const kept = await hashSecret('pabellón número nueve', CHEAP);
		expect(await matchesSecret('pabello\u0301n nu\u0301mero nueve', kept)).toBe(true);
	});
});

describe('the secrets file', () => {
	it('keeps secrets across openings without holding them', async () => {
		const path = join(await tempFolder(), 'secrets.json');
		await (await openSecrets(path, CHEAP)).set('p1', 'seven grey masks');
		expect(await readFile(path, 'utf8')).not.toContain('seven');
		const again = await openSecrets(path, CHEAP);
		expect(again.has('p1')).toBe(true);
		expect(await again.verify('p1', 'seven grey masks')).toBe(true);
		expect(await again.verify('p1', 'seven grey mask')).toBe(false);
	});

	it('lets nobody in who has no secret', async () => {
		const secrets = await openSecrets(join(await tempFolder(), 'secrets.json'), CHEAP);
		expect(await secrets.verify('p1', '')).toBe(false);
		await secrets.set('p1', '2580');
		await secrets.remove('p1');
		expect(await secrets.verify('p1', '2580')).toBe(false);
		expect(await secrets.verify('__proto__', '')).toBe(false);
	});

	it('is readable by its owner only and leaves no draft behind', async () => {
		const folder = await tempFolder();
		const secrets = await openSecrets(join(folder, 'secrets.json'), CHEAP);
		await Promise.all(['p1', 'p2', 'p3'].map((person) => secrets.set(person, `${person} 2580`)));
		expect(await readdir(folder)).toEqual(['secrets.json']);
		expect((await stat(join(folder, 'secrets.json'))).mode & 0o777).toBe(0o600);
		const again = await openSecrets(join(folder, 'secrets.json'), CHEAP);
		for (const person of ['p1', 'p2', 'p3']) expect(await again.verify(person, `${person} 2580`)).toBe(true);
	});

	it('refuses to start on a damaged file instead of letting everyone in or out', async () => {
		const path = join(await tempFolder(), 'secrets.json');
		for (const text of ['', '{', '{"version":1}', '{"version":1,"people":{"p1":{"algorithm":"none"}}}']) {
			await writeFile(path, text);
			await expect(openSecrets(path, CHEAP)).rejects.toThrow(/damaged/);
		}
	});
});
