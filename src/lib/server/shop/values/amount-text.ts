import { SHOP_VALUES, type SettingAmount, type ShopValueId } from '$lib/engine';
import { quantityText, windowText, type Reader } from '$lib/paper';

/** What a value is until the shop sets it, SI. */
export const deliveredAmount = (id: ShopValueId): SettingAmount => {
	const { value, min, max } = SHOP_VALUES[id] as { value?: number; min?: number; max?: number };
	return min === undefined || max === undefined ? { value: value! } : { min, max };
};

/** An amount in the reader's units. */
export const amountText = (id: ShopValueId, amount: SettingAmount, reader: Reader): string => {
	const { dimension } = SHOP_VALUES[id];
	return 'min' in amount
		? windowText(amount, dimension, reader)
		: quantityText(amount.value, dimension, reader);
};
