import { describe, expect, it } from 'vitest';
import {
	celsius,
	DEMO_SHEETS,
	exampleTickets,
	percent,
	settingProblems,
	SHOP_VALUES,
	shopValue,
	valueBounds,
	type Shop,
	type ShopValueId
} from '$lib/engine';

const ids = Object.keys(SHOP_VALUES) as ShopValueId[];
const shop: Shop = {
	on: '2026-03-02',
	sheets: Object.fromEntries(DEMO_SHEETS.map((sheet) => [sheet.id, sheet])),
	settings: {}
};
const amountAt = (id: ShopValueId, low: number, high: number) =>
	SHOP_VALUES[id].shape === 'window' ? { min: low, max: high } : { value: low };

describe('an amount for a shop value', () => {
	it.each(ids)('%s as delivered is one', (id) => {
		const { shape } = SHOP_VALUES[id];
		const { min, max, value } = SHOP_VALUES[id] as { min?: number; max?: number; value?: number };
		const amount = shape === 'window' ? { min: min!, max: max! } : { value: value! };
		expect(settingProblems(id, amount, shop)).toEqual([]);
	});

	it('is refused outside what can exist, at its own field', () => {
		expect(settingProblems('cap.abs', { value: celsius(650) }, shop).map(({ at }) => at)).toEqual(['value']);
		expect(settingProblems('cap.abs', { value: NaN }, shop)).toHaveLength(1);
		expect(settingProblems('gun.overlap', { min: percent(40), max: percent(95) }, shop)).toMatchObject([
			{ at: 'max' }
		]);
		expect(settingProblems('gear.oven.goggles', { value: 2 }, shop)).toHaveLength(1);
	});

	it('is refused upside down, and in the other shape', () => {
		expect(settingProblems('gun.overlap', { min: percent(60), max: percent(40) }, shop)).toMatchObject([
			{ at: 'max' }
		]);
		expect(settingProblems('gun.overlap', { value: percent(50) }, shop)).toHaveLength(1);
		expect(settingProblems('cap.abs', { min: celsius(60), max: celsius(70) }, shop)).toHaveLength(1);
	});

	it('may not cross the value it belongs with as that one holds on the day', () => {
		const amount = { value: percent(60) };
		expect(settingProblems('profile.share-least', amount, shop)).toHaveLength(1);
		const raised: Shop = {
			...shop,
			settings: { 'profile.share-most': { from: '2026-01-01', value: percent(80) } }
		};
		expect(settingProblems('profile.share-least', amount, raised)).toEqual([]);
		expect(shopValue(raised, 'profile.share-most').value).toBe(percent(80));
	});
});

/** Values of one kind of thing, such as all of the gun. */
const kinds = [...new Set(ids.map((id) => id.split(/[.-]/)[0]!))];

describe('at the very ends of what a shop may set', () => {
	it.each(kinds)('all values of “%s” leave every example ticket solvable', (kind) => {
		const setTo = (end: 'low' | 'both' | 'high'): Shop['settings'] =>
			Object.fromEntries(
				ids
					.filter((id) => id.split(/[.-]/)[0] === kind)
					.map((id) => {
						const [low, high] = valueBounds(id);
						const from = end === 'high' ? high : low;
						return [id, { from: '2026-01-01', ...amountAt(id, from, end === 'low' ? low : high) }];
					})
			);
		for (const end of ['low', 'both', 'high'] as const)
			expect(() => exampleTickets({ ...shop, settings: setTo(end) })).not.toThrow();
	});
});
