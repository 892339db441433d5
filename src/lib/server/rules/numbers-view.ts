import {
	AUTHORITIES,
	AUTHORITY_NAMES,
	FORMULAS,
	SHOP_VALUES,
	shopValue,
	shopWindow,
	SOURCES,
	type FormulaNote,
	type Shop,
	type ShopValueId
} from '$lib/engine';
import { say } from '$lib/i18n';
import { provenanceView, quantityText, windowText, type Reader } from '$lib/paper';

type SingleId = Parameters<typeof shopValue>[1];
type WindowId = Parameters<typeof shopWindow>[1];

/** One shop value as it holds now, and whose number it is. */
function valueRow(id: ShopValueId, shop: Shop, reader: Reader) {
	const { label, dimension, shape } = SHOP_VALUES[id];
	const row = { id, label: say(label, reader.lang) };
	if (shape === 'value') {
		const { value, provenance } = shopValue(shop, id as SingleId);
		return {
			...row,
			value: quantityText(value, dimension, reader),
			provenance: provenanceView(provenance, true)
		};
	}
	const { min, max } = shopWindow(shop, id as WindowId);
	return {
		...row,
		value: windowText({ min: min.value, max: max.value }, dimension, reader),
		provenance: provenanceView(min.provenance, true)
	};
}

const formulaRow = ({ id, title, equation, source, inputs, validFor }: FormulaNote, reader: Reader) => ({
	id,
	title: say(title, reader.lang),
	equation,
	provenance: provenanceView(source),
	valid: Object.entries(inputs).map(([name, dimension]) => {
		const [min, max] = validFor[name]!;
		return { name, window: windowText({ min, max }, dimension, reader) };
	})
});

/** Where the engine's numbers come from: order of authority, shop values, formulas and everything that was read. */
export const numbersView = (shop: Shop, reader: Reader) => ({
	authorities: AUTHORITIES.map((authority) => say(AUTHORITY_NAMES[authority], reader.lang)),
	values: (Object.keys(SHOP_VALUES) as ShopValueId[]).map((id) => valueRow(id, shop, reader)),
	formulas: FORMULAS.map((formula) => formulaRow(formula, reader)),
	sources: Object.entries(SOURCES).map(([id, { title, read }]) => ({
		id,
		title,
		read: (read as string) === 'nothing' ? null : read
	}))
});
