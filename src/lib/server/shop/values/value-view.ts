import { SHOP_VALUES, type SettingAmount, type Shop, type ShopValueId } from '$lib/engine';
import { say } from '$lib/i18n';
import { provenanceView, type Reader } from '$lib/paper';
import type { ShopValue } from '$lib/records';
import type { App } from '../../app';
import { nameOf, shownText } from '../../shown-text';
import { amountText, deliveredAmount } from './amount-text';

/** A decision of the shop on a value, in words. */
const decisionView = (app: App, id: ShopValueId, decided: ShopValue, reader: Reader) => ({
	amount: amountText(id, decided.amount as unknown as SettingAmount, reader),
	from: decided.from,
	at: decided.at,
	by: nameOf(app, decided.by, reader.lang),
	reason: decided.reason && {
		text: shownText(app, decided.reason, reader.lang),
		lang: decided.reason.lang
	}
});

/** One shop value: as it holds on the shop's day, as delivered, whose number it is, and everything the shop decided on it. */
export const valueView = (app: App, id: ShopValueId, reader: Reader, { on, settings }: Shop) => {
	const { label, provenance } = SHOP_VALUES[id];
	const setting = settings[id];
	const decisions = (app.journal.state.shop.values.get(id) ?? []).map((each) =>
		decisionView(app, id, each, reader)
	);
	return {
		id,
		label: say(label, reader.lang),
		holds: amountText(id, setting ?? deliveredAmount(id), reader),
		delivered: amountText(id, deliveredAmount(id), reader),
		provenance: provenanceView(provenance, true),
		/** The decision that holds, if the shop made one. */
		set: setting ? (decisions.findLast(({ from }) => from === setting.from) ?? null) : null,
		coming: decisions.filter(({ from }) => from > on),
		decisions: decisions.toReversed()
	};
};

export type ValueView = ReturnType<typeof valueView>;
