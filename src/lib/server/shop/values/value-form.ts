import {
	parseQuantity,
	problemText,
	SHOP_VALUES,
	UNITS,
	type SettingAmount,
	type Shop,
	type ShopValueId
} from '$lib/engine';
import { say, shopValues } from '$lib/i18n';
import { quantityText, type Reader } from '$lib/paper';
import { deliveredAmount } from './amount-text';

export type AmountField = 'value' | 'min' | 'max';

const MOST_UNITS = 5;

export const amountFields = (id: ShopValueId): readonly AmountField[] =>
	SHOP_VALUES[id].shape === 'window' ? ['min', 'max'] : ['value'];

const heldOf = (id: ShopValueId, { settings }: Shop) =>
	(settings[id] ?? deliveredAmount(id)) as Partial<Record<AmountField, number>>;

/** The entries of a value's form, filled with the number that holds. */
export const amountEntries = (id: ShopValueId, reader: Reader, shop: Shop) => {
	const { dimension } = SHOP_VALUES[id];
	const held = heldOf(id, shop);
	return amountFields(id).map((name) => ({
		id: name,
		name,
		kind: 'quantity' as const,
		label: shopValues[reader.lang][name],
		units: UNITS[dimension]
			.map(({ label }) => say(label, reader.lang))
			.filter(Boolean)
			.slice(0, MOST_UNITS),
		value: quantityText(held[name]!, dimension, reader)
	}));
};

const plain = (text: string) => text.replace(/\s+/g, ' ').trim();

/**
 * The amount that was typed, with its unit as people write it. An entry left as it was shown keeps the number behind it,
 * which the screen rounds.
 */
export const readAmount = (
	id: ShopValueId,
	typed: Readonly<Partial<Record<AmountField, string>>>,
	reader: Reader,
	shop: Shop
): { ok: true; amount: SettingAmount } | { ok: false; problems: Record<string, string> } => {
	const { dimension } = SHOP_VALUES[id];
	const held = heldOf(id, shop);
	const read: Partial<Record<AmountField, number>> = {};
	const problems: Record<string, string> = {};
	for (const name of amountFields(id)) {
		const text = typed[name] ?? '';
		if (plain(text) === plain(quantityText(held[name]!, dimension, reader))) {
			read[name] = held[name]!;
			continue;
		}
		const parsed = parseQuantity(text, dimension, { lang: reader.lang });
		if (parsed.ok) read[name] = parsed.value;
		else problems[name] = say(problemText(parsed.problem), reader.lang);
	}
	if (Object.keys(problems).length > 0) return { ok: false, problems };
	return { ok: true, amount: read as unknown as SettingAmount };
};
