import { describe, expect, it } from 'vitest';
import { METRIC, percent, psi, SHOP_VALUES, shopValue, shopWindow, US, type ShopValueId } from '$lib/engine';
import { shopInForce } from '$lib/server/shop-in-force';
import { TASKS } from '$lib/server/shop/values/gear-view';
import { setGear } from '$lib/server/shop/values/set-gear';
import { setValue } from '$lib/server/shop/values/set-value';
import { amountEntries, readAmount } from '$lib/server/shop/values/value-form';
import { valueList } from '$lib/server/shop/values/value-list';
import { valuePage } from '$lib/server/shop/values/value-page';
import { answered, demoShop, posted } from './in-the-shop';

const READERS = (['en', 'es'] as const).flatMap((lang) => [METRIC, US].map((units) => ({ lang, units })));
const WHY = { from: '2026-03-02', reason: 'our compressor' };
const ids = (Object.keys(SHOP_VALUES) as ShopValueId[]).filter((id) => !id.startsWith('gear.'));

describe('the list of shop values', () => {
	it('shows every one of them once, the gear by task', async () => {
		const { app } = await demoShop();
		const { rooms, gear } = valueList(app, READERS[0]!);
		expect(rooms.flatMap(({ values }) => values.map(({ id }) => id)).sort()).toEqual([...ids].sort());
		expect(gear.tasks.length * gear.items.length).toBe(Object.keys(SHOP_VALUES).length - ids.length);
	});
});

describe('the form of a shop value', () => {
	it.each(ids)('%s left as it is shown keeps its exact number for every reader', async (id) => {
		const { app } = await demoShop();
		const { shop } = shopInForce(app);
		const { value, min, max } = SHOP_VALUES[id] as { value?: number; min?: number; max?: number };
		for (const reader of READERS) {
			const typed = Object.fromEntries(
				amountEntries(id, reader, shop).map((each) => [each.name, each.value])
			);
			expect(readAmount(id, typed, reader, shop)).toEqual({
				ok: true,
				amount: value === undefined ? { min, max } : { value }
			});
		}
	});

	it('sets a window in the units people type, from a day on, and says who did', async () => {
		const { app } = await demoShop();
		const { to } = await answered(
			setValue(
				posted(app, { min: '30 psi', max: '3.5 bar', ...WHY, from: '2026-03-05' }),
				'blast.pressure.steel'
			)
		);
		expect(to).toBe('/en/shop/values/blast.pressure.steel?done=set');
		const on = (day: string) => shopWindow(shopInForce(app, day).shop, 'blast.pressure.steel');
		expect(on('2026-03-04').min.value).toBe(3e5);
		expect(on('2026-03-05').min.value).toBeCloseTo(psi(30), 6);
		expect(on('2026-03-05').min.provenance.origin).toBe('shop');
		const page = valuePage(app, 'blast.pressure.steel', { lang: 'en', units: METRIC });
		if (!page || page === 'gear') throw new Error('no page');
		expect(page.view).toMatchObject({
			set: null,
			coming: [{ by: 'Marta Quiroga', from: '2026-03-05', reason: { text: 'our compressor' } }]
		});
	});

	it.each([
		[{ min: '' }, 'min'],
		[{ min: '3' }, 'min'],
		[{ min: '3 µm' }, 'min'],
		[{ min: '-1 bar' }, 'min'],
		[{ min: 'NaN bar' }, 'min'],
		[{ min: '1e9 bar' }, 'min'],
		[{ max: '90 bar' }, 'max'],
		[{ max: '2 bar' }, 'max'],
		[{ from: '' }, 'from'],
		[{ from: '2026-02-30' }, 'from'],
		[{ from: '2026-03-01' }, 'from'],
		[{ reason: '  ' }, 'reason'],
		[{ reason: 'x'.repeat(501) }, 'reason']
	])('%j is sent back at “%s” with what was typed, and nothing is saved', async (change, at) => {
		const { app } = await demoShop();
		const before = app.journal.head.hash;
		const form = { min: '3 bar', max: '5 bar', ...WHY, ...change };
		const { status, data } = await answered(setValue(posted(app, form), 'blast.pressure.steel'));
		expect(status).toBeGreaterThanOrEqual(400);
		expect(Object.keys(data!.problems)).toEqual([at]);
		expect(data!.kept).toEqual(form);
		expect(app.journal.head.hash).toBe(before);
	});

	it('holds a value against its partner on the day it would start', async () => {
		const { app } = await demoShop();
		const set = (id: ShopValueId, value: string) => answered(setValue(posted(app, { value, ...WHY }), id));
		expect((await set('profile.share-least', '60 %')).data!.problems).toHaveProperty('value');
		expect((await set('profile.share-most', '70 %')).to).toBeDefined();
		expect((await set('profile.share-least', '60 %')).to).toBeDefined();
		expect(shopValue(shopInForce(app).shop, 'profile.share-least').value).toBe(percent(60));
	});

	it('knows no other ids', async () => {
		const { app } = await demoShop();
		for (const id of ['', 'constructor', 'cap', 'cap.unobtainium'])
			expect(valuePage(app, id, READERS[0]!)).toBeUndefined();
		expect(valuePage(app, 'gear.oven.goggles', READERS[0]!)).toBe('gear');
	});
});

describe('the gear listed per task', () => {
	const listed = (app: Parameters<typeof valueList>[0]) =>
		Object.fromEntries(valueList(app, READERS[0]!).gear.tasks.map(({ id, listed }) => [id, listed]));

	it('is entered as one act, only what differs', async () => {
		const { app } = await demoShop();
		const form = { ...listed(app), oven: ['face-shield', 'goggles'], ...WHY };
		const before = app.journal.entries.length;
		expect((await answered(setGear(posted(app, form)))).to).toContain('done=set');
		const entered = app.journal.entries.slice(before);
		expect(entered.map(({ data }) => (data as { value: string }).value).sort()).toEqual([
			'gear.oven.goggles',
			'gear.oven.heat-gloves',
			'gear.oven.long-sleeves'
		]);
		expect(new Set(entered.map(({ at }) => at)).size).toBe(1);
		expect(entered.at(0)!.more).toBe(2);
		expect([...listed(app).oven!].sort()).toEqual(['face-shield', 'goggles']);
	});

	it('takes no tick the form does not offer, since it would pass for one taken away', async () => {
		const { app } = await demoShop();
		const before = app.journal.head.hash;
		for (const oven of [['face-shield', 'sandals'], ['']]) {
			const { status, data } = await answered(setGear(posted(app, { ...listed(app), oven, ...WHY })));
			expect(status).toBe(400);
			expect(Object.keys(data!.problems)).toEqual(['']);
		}
		expect(app.journal.head.hash).toBe(before);
	});

	it('that does not change is not entered, and a form without reason is sent back with its ticks', async () => {
		const { app } = await demoShop();
		const before = app.journal.head.hash;
		expect((await answered(setGear(posted(app, { ...listed(app), ...WHY })))).status).toBe(409);
		const { data } = await answered(setGear(posted(app, { oven: ['goggles'] })));
		expect(Object.keys(data!.problems).sort()).toEqual(['from', 'reason']);
		expect(data!.kept.oven).toEqual(['goggles']);
		expect(TASKS.every((task) => Array.isArray(data!.kept[task]))).toBe(true);
		expect(app.journal.head.hash).toBe(before);
	});
});
