import {
	CUPS,
	FAMILIES,
	HAZARDS,
	lineOn,
	SHEET_LINES,
	THINNERS,
	unitOf,
	type DataSheet,
	type IsoDate,
	type LineId
} from '$lib/engine';
import { format, say, sheets } from '$lib/i18n';
import { quantityText, windowText } from './quantity-text';
import type { Reader } from './reader';

/** A data sheet as it holds on a day, in words and in the reader's units. */
export function sheetView(sheet: DataSheet, on: IsoDate, reader: Reader) {
	const { lang } = reader;
	const words = sheets[lang];
	const line = (id: LineId) => {
		const entry = lineOn(sheet, id, on);
		if (!entry) return [];
		const { dimension, label } = SHEET_LINES[id];
		const { toSi } = unitOf(dimension, entry.unit);
		const value =
			'value' in entry
				? quantityText(toSi(entry.value), dimension, reader)
				: windowText({ min: toSi(entry.min), max: toSi(entry.max) }, dimension, reader);
		return [{ label: say(label, lang), value }];
	};
	return {
		id: sheet.id,
		title: sheet.title,
		lang: sheet.lang,
		demo: sheet.demo,
		rows: [
			{ label: words.family, value: `${sheet.family}: ${say(FAMILIES[sheet.family], lang)}` },
			...(sheet.basis ? [{ label: words.basis, value: words.basisOf[sheet.basis] }] : []),
			{ label: words.thinner, value: sheet.thinner ? say(THINNERS[sheet.thinner], lang) : words.none },
			...(sheet.cup ? [{ label: words.cup, value: say(CUPS[sheet.cup], lang) }] : []),
			{ label: words.filled, value: sheet.filled ? words.yes : words.no },
			{
				label: words.hazards,
				value: format.list(
					sheet.hazards.map((hazard) => say(HAZARDS[hazard], lang)),
					lang
				)
			},
			...(Object.keys(SHEET_LINES) as LineId[]).flatMap(line)
		]
	};
}
