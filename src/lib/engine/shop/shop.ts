import type { DataSheet, IsoDate } from '../coatings/sheet';
import { remembered } from '../plan/remembered';
import type { Traced } from '../plan/trace';
import type { Dimension, Si } from '../units/dimension';
import { SHOP_VALUES, type ShopValueId } from './values';
import type { ShopValue } from './define';

/** What a lead has set in place of a default, SI, from a day on. */
export type ShopValueSetting = { readonly from: IsoDate } & (
	{ readonly value: number } | { readonly min: number; readonly max: number }
);

/** The sheets and shop values in force on one day. */
export type Shop = {
	readonly on: IsoDate;
	readonly sheets: Readonly<Record<string, DataSheet>>;
	readonly settings: Readonly<Partial<Record<ShopValueId, ShopValueSetting>>>;
};

export type TracedWindow<D extends Dimension = Dimension> = {
	readonly min: Traced<D>;
	readonly max: Traced<D>;
};

type Definition = typeof SHOP_VALUES;
type IdsOf<Shape> = { [K in ShopValueId]: Definition[K]['shape'] extends Shape ? K : never }[ShopValueId];
type DimensionOf<K extends ShopValueId> = Definition[K]['dimension'];

const traced = <K extends ShopValueId>(shop: Shop, id: K, value: number): Traced<DimensionOf<K>> => {
	const { label, dimension, provenance } = SHOP_VALUES[id] as ShopValue;
	return {
		value: value as Si<DimensionOf<K>>,
		dimension: dimension as DimensionOf<K>,
		label,
		origin: { kind: 'shop-value', id },
		provenance: shop.settings[id]
			? { origin: 'shop', verification: { read: 'set by the shop' } }
			: provenance,
		inputs: {}
	};
};

/** What holds of each value in a shop, with its derivation. */
const inForce = remembered((shop: Shop) =>
	remembered((id: ShopValueId): Traced | TracedWindow => {
		const amount = shop.settings[id] ?? SHOP_VALUES[id];
		return 'min' in amount
			? { min: traced(shop, id, amount.min), max: traced(shop, id, amount.max) }
			: traced(shop, id, amount.value);
	}, new Map())
);

/** A single number of the shop, as set or by default. */
export const shopValue = <K extends IdsOf<'value'>>(shop: Shop, id: K) =>
	inForce(shop)(id) as Traced<DimensionOf<K>>;

/** A window of the shop, as set or by default. */
export const shopWindow = <K extends IdsOf<'window'>>(shop: Shop, id: K) =>
	inForce(shop)(id) as TracedWindow<DimensionOf<K>>;
