import type { DataSheet, Shop, ShopValueSetting } from '$lib/engine';
import { dayOf, inForce, type InForce } from '$lib/records';
import type { App } from './app';

export type ShopInForce = {
	readonly shop: Shop;
	/** Names what was in force by content, as stored with every attempt. */
	readonly refs: Pick<InForce, 'valuesHash' | 'sheets'>;
};

/**
 * The sheets and shop values that hold on a day in the shop, as the engine takes them. What the journal holds was
 * found valid before it was entered.
 * @param day YYYY-MM-DD; today by the shop's own calendar if left out
 */
export const shopInForce = ({ journal, now }: Pick<App, 'journal' | 'now'>, day?: string): ShopInForce => {
	const on = day ?? dayOf(journal.state, now().toISOString());
	const { sheets, values, valuesHash } = inForce(journal.state.shop, on);
	return {
		shop: {
			on,
			sheets: Object.fromEntries(
				sheets.map(({ sheet, content }) => [sheet, content as unknown as DataSheet])
			),
			settings: Object.fromEntries(
				Object.entries(values).map(([id, amount]) => [id, amount as unknown as ShopValueSetting])
			)
		},
		refs: { valuesHash, sheets }
	};
};
