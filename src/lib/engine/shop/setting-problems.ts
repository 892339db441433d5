import type { Text } from '../text';
import { format } from '../units/display';
import { METRIC, unitFor } from '../units/preferences';
import { valueBounds } from './bounds';
import type { Shop } from './shop';
import { SHOP_VALUES, type ShopValueId } from './values';
import { SAME } from '../units/same';

/** A number or window that a lead wants to set, SI. */
export type SettingAmount = { readonly value: number } | { readonly min: number; readonly max: number };

export type SettingProblem = { readonly at: 'value' | 'min' | 'max'; readonly text: Text };

/** Pairs of values of which the first must not pass the second, or nothing would be left between them. */
const IN_ORDER: readonly (readonly [ShopValueId, ShopValueId])[] = [
	['profile.share-least', 'profile.share-most']
];

const UPSIDE_DOWN: Text = {
	en: 'The highest value is below the lowest.',
	es: 'El valor máximo es menor que el mínimo.'
};
const WRONG_SHAPE: Text = {
	en: 'This value is not set in this form.',
	es: 'Este valor no se fija de esta forma.'
};

function outOfBounds(id: ShopValueId, amount: number): Text | undefined {
	const [low, high] = valueBounds(id);
	const room = SAME * Math.max(1, Math.abs(amount));
	if (amount >= low - room && amount <= high + room) return undefined;
	const { dimension } = SHOP_VALUES[id];
	const shown = (lang: keyof Text) =>
		[low, high].map((bound) => format(bound, dimension, unitFor(bound, dimension, METRIC), lang));
	return {
		en: `No shop has this: it lies between ${shown('en').join(' and ')}. Check number and unit.`,
		es: `Ningún taller tiene esto: está entre ${shown('es').join(' y ')}. Revise el número y la unidad.`
	};
}

const single = (shop: Shop, id: ShopValueId) => (shop.settings[id] ?? SHOP_VALUES[id]) as { value: number };

/** What the value says against its partner as it holds on the shop's day. */
function outOfOrder(id: ShopValueId, amount: number, shop: Shop): Text | undefined {
	for (const [low, high] of IN_ORDER) {
		const crossed =
			id === low ? amount > single(shop, high).value : id === high ? amount < single(shop, low).value : false;
		if (!crossed) continue;
		const other = SHOP_VALUES[id === low ? high : low].label;
		return {
			en: `This does not go with “${other.en}” as it holds: set that one first.`,
			es: `Esto no concuerda con «${other.es}» como rige: fije primero ese.`
		};
	}
	return undefined;
}

/**
 * What is wrong with an amount for a shop value, by itself and beside the values of the shop on the day it would start.
 * Legal limits are no shop values, so nothing set here widens one.
 */
export function settingProblems(id: ShopValueId, amount: SettingAmount, shop: Shop): SettingProblem[] {
	const windowed = SHOP_VALUES[id].shape === 'window';
	if (windowed !== 'min' in amount) return [{ at: windowed ? 'min' : 'value', text: WRONG_SHAPE }];
	const found = (at: SettingProblem['at'], text: Text | undefined) => (text ? [{ at, text }] : []);
	if (!('min' in amount))
		return found('value', outOfBounds(id, amount.value) ?? outOfOrder(id, amount.value, shop));
	const { min, max } = amount;
	return [
		...found('min', outOfBounds(id, min)),
		...found('max', outOfBounds(id, max) ?? (min > max ? UPSIDE_DOWN : undefined))
	];
}
