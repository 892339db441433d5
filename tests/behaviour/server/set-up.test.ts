import { describe, expect, it } from 'vitest';
import { setUp } from '$lib/server/set-up';
import { createSetupCode, isSetupCode } from '$lib/server/setup-code';
import { readSetup } from '$lib/server/setup-form';
import { testApp } from './test-app';

const ENTRIES = {
	code: '',
	shop: 'Line Nine',
	zone: 'America/Chicago',
	lead: 'Ana Ferrer',
	secret: 'seven grey masks',
	again: 'seven grey masks'
};

const form = (entries: Record<string, string>) => {
	const data = new FormData();
	for (const [name, value] of Object.entries(entries)) data.set(name, value);
	return data;
};

describe('the one-time code', () => {
	it('is taken however it is typed, and nothing else is', () => {
		expect(isSetupCode(' 2ab cd-efghj', '2ABCD-EFGHJ')).toBe(true);
		for (const typed of ['', '2ABCDEFGH', '2ABCDEFGHK', '2ABCDEFGHJJ', 'é2ABCDEFGH'])
			expect(isSetupCode(typed, '2ABCD-EFGHJ')).toBe(false);
	});

	it('is another one each time, without signs that look alike', () => {
		const codes = Array.from({ length: 200 }, createSetupCode);
		expect(new Set(codes).size).toBe(200);
		for (const code of codes) expect(code).toMatch(/^[2-9A-HJ-NP-Z]{5}-[2-9A-HJ-NP-Z]{5}$/);
	});
});

describe('the form of the first visit', () => {
	it('is read when every entry makes sense', () => {
		expect(readSetup(form({ ...ENTRIES, code: 'x' }))).toMatchObject({ ok: true, problems: {} });
	});

	it.each([
		[{}, { code: 'empty' }],
		[{ code: 'x', shop: ' ' }, { shop: 'empty' }],
		[{ code: 'x', lead: 'a'.repeat(201) }, { lead: 'too-long' }],
		[{ code: 'x', zone: 'Mars/Olympus' }, { zone: 'wrong-zone' }],
		[{ code: 'x', secret: 'short', again: 'short' }, { secret: 'passphrase-short' }],
		[{ code: 'x', again: 'seven gray masks' }, { again: 'not-alike' }]
	])('names what does not: %j', (changes, problems) => {
		expect(readSetup(form({ ...ENTRIES, ...changes }))).toMatchObject({ ok: false, problems });
	});

	it('takes an upload or a missing field for nothing typed', () => {
		const data = form(ENTRIES);
		data.set('shop', new Blob(['x']), 'x.txt');
		data.delete('lead');
		expect(readSetup(data).problems).toMatchObject({ shop: 'empty', lead: 'empty' });
	});
});

describe('setting up the shop', () => {
	const from = { address: '192.0.2.7', lang: 'en' } as const;

	it('needs the code', async () => {
		const { app, wait } = await testApp();
		for (let i = 0; i < 3; i++)
			expect(await setUp(app, { ...ENTRIES, code: 'AAAAA-AAAAA' }, from)).toEqual({
				ok: false,
				code: { reason: 'wrong' }
			});
		const right = { ...ENTRIES, code: app.setupCode };
		expect(await setUp(app, right, from)).toEqual({ ok: false, code: { reason: 'wait', seconds: 5 } });
		expect(app.journal.head.count).toBe(0);
		wait(5000);
		const done = await setUp(app, right, from);
		expect(done.ok).toBe(true);
		expect(app.journal.entries[0]).toMatchObject({ event: 'shop.founded', data: { demo: false } });
	});

	it('makes a lead who can get in, once, however often the form arrives', async () => {
		const { app } = await testApp();
		const right = { ...ENTRIES, code: app.setupCode };
		const answers = await Promise.all([setUp(app, right, from), setUp(app, right, from)]);
		expect(answers.filter(({ ok }) => ok)).toHaveLength(1);
		expect(answers.find(({ ok }) => !ok)).toMatchObject({ refusal: { code: 'already-founded' } });
		const lead = app.journal.state.shop.founded?.lead ?? '';
		expect(await app.secrets.verify(lead, ENTRIES.secret)).toBe(true);
		expect(app.journal.state.people.size).toBe(1);
	});
});
