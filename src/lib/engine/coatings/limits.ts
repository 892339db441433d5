import type { Shop } from '../shop/shop';
import { statedValue, statedWindow, type ValueLine, type WindowLine } from './in-force';

/** Green limits in SI that a sheet of the shop states on the shop's day; undefined where it is silent or unknown. */
export function sheetLimits(
	shop: Shop,
	id: string,
	line: WindowLine
): { min: number; max: number } | undefined {
	const sheet = shop.sheets[id];
	const window = sheet && statedWindow(sheet, line, shop.on);
	return window && { min: window.min.value, max: window.max.value };
}

/** A number in SI that a sheet of the shop states on the shop's day; undefined where it is silent or unknown. */
export function sheetNumber(shop: Shop, id: string, line: ValueLine): number | undefined {
	const sheet = shop.sheets[id];
	return sheet && statedValue(sheet, line, shop.on)?.value;
}
