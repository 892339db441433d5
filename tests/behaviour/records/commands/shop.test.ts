import { describe, expect, test } from 'vitest';
import {
	contentHash,
	inForce,
	saveSheet,
	schemeAt,
	schemeNamed,
	setScheme,
	setShopValue,
	type Json
} from '$lib/records';
import { defaultScheme } from '$lib/learning';
import { codeOf, testShop, words } from '../test-shop';

const sheet = (basedOn: number, effective: string, film: number) => ({
	sheet: 'sheet-a',
	basedOn,
	effective,
	content: { film }
});

describe('data sheets', () => {
	test('each revision is in force from its own day until the next', async () => {
		const shop = await testShop();
		await shop.do(saveSheet, sheet(0, '2026-03-02', 20), 'lead-1');
		await shop.do(saveSheet, sheet(1, '2026-03-10', 25), 'lead-1');
		const on = (day: string) => inForce(shop.state.shop, day).sheets.map(({ content }) => content);
		expect(on('2026-03-01')).toEqual([]);
		expect(on('2026-03-02')).toEqual([{ film: 20 }]);
		expect(on('2026-03-09')).toEqual([{ film: 20 }]);
		expect(on('2026-03-10')).toEqual([{ film: 25 }]);
		expect(inForce(shop.state.shop, '2026-03-10').sheets[0]?.contentHash).toBe(contentHash({ film: 25 }));
	});

	test('are saved by a lead, never for a day that is past', async () => {
		const shop = await testShop();
		expect(codeOf(shop.ask(saveSheet, sheet(0, '2026-03-02', 20), 'sup-1'))).toBe('not-allowed');
		expect(codeOf(shop.ask(saveSheet, sheet(0, '2026-03-01', 20), 'lead-1'))).toBe('backdated');
	});

	test('are not saved over a revision the editor has not seen, nor unchanged', async () => {
		const shop = await testShop();
		await shop.do(saveSheet, sheet(0, '2026-03-02', 20), 'lead-1');
		expect(codeOf(shop.ask(saveSheet, sheet(0, '2026-03-02', 25), 'lead-1'))).toBe('wrong-revision');
		expect(codeOf(shop.ask(saveSheet, sheet(1, '2026-03-02', 20), 'lead-1'))).toBe('unchanged');
	});

	test('hold plain JSON only', async () => {
		const shop = await testShop();
		for (const content of [
			{ film: Number.NaN },
			{ film: Infinity },
			'lone \ud800',
			[new Date()],
			undefined
		]) {
			const wish = { ...sheet(0, '2026-03-02', 1), content: content as unknown as Json };
			expect(codeOf(await shop.try(saveSheet, wish, 'lead-1'))).toBe('malformed');
		}
		let deep: Json = 1;
		for (let n = 0; n < 5000; n += 1) deep = [deep];
		expect(codeOf(await shop.try(saveSheet, { ...sheet(0, '2026-03-02', 1), content: deep }, 'lead-1'))).toBe(
			'malformed'
		);
	});
});

describe('shop values', () => {
	test('are set by a lead, from a day on, and named by content', async () => {
		const shop = await testShop();
		const set = (amount: Json, from: string) =>
			shop.do(setShopValue, { value: 'blast-to-coat', amount, from, reason: words('t-why') }, 'lead-1');
		await set(7200, '2026-03-02');
		await set(3600, '2026-03-05');
		await set(5400, '2026-03-02');
		const on = (day: string) => inForce(shop.state.shop, day);
		expect(on('2026-03-04').values).toEqual({ 'blast-to-coat': 5400 });
		expect(on('2026-03-05').values).toEqual({ 'blast-to-coat': 3600 });
		expect(on('2026-03-05').valuesHash).toBe(contentHash({ 'blast-to-coat': 3600 }));
		const wish = { value: 'blast-to-coat', amount: 1, from: '2026-03-01', reason: null };
		expect(codeOf(shop.ask(setShopValue, wish, 'lead-1'))).toBe('backdated');
		expect(codeOf(shop.ask(setShopValue, { ...wish, from: '2026-03-02' }, 'sup-1'))).toBe('not-allowed');
	});
});

describe('the scheme', () => {
	const longer = { ...defaultScheme, retest: { ...defaultScheme.retest, daysApart: 14 } } as unknown as Json;

	test('has versions, each from its day, and decisions keep the one they were taken under', async () => {
		const shop = await testShop();
		const first = schemeAt(shop.state, shop.now)!;
		await shop.do(setScheme, { limits: longer, effective: '2026-03-10' }, 'lead-1');
		expect(schemeAt(shop.state, shop.now)?.ref).toEqual(first.ref);
		shop.pass({ days: 10 });
		expect(schemeAt(shop.state, shop.now)?.limits.retest.daysApart).toBe(14);
		expect(schemeNamed(shop.state, first.ref)?.limits.retest.daysApart).toBe(7);
	});

	test('is set by a lead, not backwards, not to nonsense', async () => {
		const shop = await testShop();
		const ask = (limits: Json, effective: string, actor = 'lead-1') =>
			codeOf(shop.ask(setScheme, { limits, effective }, actor));
		expect(ask(longer, '2026-03-02', 'sup-1')).toBe('not-allowed');
		expect(ask(longer, '2026-03-01')).toBe('backdated');
		expect(ask({ sequential: {} }, '2026-03-02')).toBe('malformed');
		expect(ask(defaultScheme as unknown as Json, '2026-03-02')).toBe('unchanged');
	});
});
