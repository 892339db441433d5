import { SHOP_VALUES, shopValue, shopWindow, type Shop, type ShopValueId } from '$lib/engine';
import { say } from '$lib/i18n';
import { provenanceView, quantityText, windowText, type Reader } from '$lib/paper';
import type { ValueRow } from './lesson-view';

function rowOf(id: ShopValueId, shop: Shop, reader: Reader): ValueRow {
	const { label, dimension, shape } = SHOP_VALUES[id];
	const single = (value: { readonly value: number }) => quantityText(value.value, dimension, reader);
	if (shape === 'value') {
		const held = shopValue(shop, id as Parameters<typeof shopValue>[1]);
		return {
			id,
			label: say(label, reader.lang),
			value: single(held),
			provenance: provenanceView(held.provenance)
		};
	}
	const { min, max } = shopWindow(shop, id as Parameters<typeof shopWindow>[1]);
	const value = windowText({ min: min.value, max: max.value }, dimension, reader);
	return { id, label: say(label, reader.lang), value, provenance: provenanceView(min.provenance) };
}

/** Every value of this shop whose name begins so, as it holds today. */
export const valuesView = (start: string, shop: Shop, reader: Reader): readonly ValueRow[] =>
	(Object.keys(SHOP_VALUES) as ShopValueId[])
		.filter((id) => id.startsWith(`${start}.`))
		.map((id) => rowOf(id, shop, reader));
