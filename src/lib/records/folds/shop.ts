import type { EventData } from '../event';
import { foldOf } from '../fold';
import { localDay } from '../local-day';

export type SheetRevision = EventData<'sheet.saved'> & { readonly by: string; readonly at: string };
export type ShopValue = EventData<'shop-value.set'> & { readonly by: string; readonly at: string };
export type SchemeVersion = EventData<'scheme.set'> & { readonly by: string; readonly at: string };

/** What the shop has decided, with every earlier decision, each from its own day. */
export interface ShopState {
	founded: (EventData<'shop.founded'> & { readonly at: string; readonly on: string }) | null;
	/** Per data sheet, in the order saved. */
	sheets: Map<string, SheetRevision[]>;
	/** Per shop value, in the order set. */
	values: Map<string, ShopValue[]>;
	schemes: SchemeVersion[];
}

function push<T>(into: Map<string, T[]>, key: string, item: T): void {
	const list = into.get(key);
	if (list) list.push(item);
	else into.set(key, [item]);
}

export const shopFold = foldOf<ShopState>(
	() => ({ founded: null, sheets: new Map(), values: new Map(), schemes: [] }),
	{
		'shop.founded': (shop, data, { at }) => {
			shop.founded = { ...data, at, on: localDay(at, data.timeZone) };
		},
		'sheet.saved': (shop, data, { at, actor }) => push(shop.sheets, data.sheet, { ...data, at, by: actor }),
		'shop-value.set': (shop, data, { at, actor }) =>
			push(shop.values, data.value, { ...data, at, by: actor }),
		'scheme.set': (shop, data, { at, actor }) => {
			shop.schemes.push({ ...data, at, by: actor });
		}
	}
);
