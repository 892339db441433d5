import { field, SUBSTRATES, type FieldId } from '$lib/engine';
import { format, incidents, say, ticket } from '$lib/i18n';
import { answerText, quantityText, type Reader } from '$lib/paper';
import type { App } from '../app';
import { shopInForce } from '../shop-in-force';
import { READING_IDS, READINGS, type Conditions } from './conditions';

/** What is known of the job, line by line; what nobody wrote down is left out and said to be. */
export function knownView(app: App, known: Conditions, reader: Reader) {
	const { lang } = reader;
	const words = ticket[lang];
	const { on, coating, material } = known;
	const sheet = coating ? shopInForce(app).shop.sheets[coating] : undefined;
	return [
		...(on ? [{ label: words.date, value: format.date(on, lang) }] : []),
		...(coating ? [{ label: words.coating, value: sheet?.title ?? coating }] : []),
		...(material ? [{ label: incidents[lang].material, value: say(SUBSTRATES[material].name, lang) }] : []),
		...READING_IDS.flatMap((id) => {
			const value = known[id];
			return value === null ? [] : [{ label: words[id], value: quantityText(value, READINGS[id], reader) }];
		}),
		...Object.entries(known.written).map(([id, answer]) => ({
			label: say(field(id as FieldId).label, lang),
			value: answerText(id as FieldId, answer, reader)
		}))
	];
}
