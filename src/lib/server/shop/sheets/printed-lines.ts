import {
	format,
	formatWindow,
	SHEET_LINES,
	unitOf,
	type DataSheet,
	type LineId,
	type SheetLine
} from '$lib/engine';
import { say, type Lang } from '$lib/i18n';
import { provenanceView } from '$lib/paper';
import { LINE_IDS } from './line-rooms';

/** A number or window in the unit the sheet prints. */
const printed = (line: LineId, entry: SheetLine, lang: Lang): string => {
	const { dimension } = SHEET_LINES[line];
	const { toSi } = unitOf(dimension, entry.unit);
	return 'value' in entry
		? format(toSi(entry.value), dimension, entry.unit, lang)
		: formatWindow({ min: toSi(entry.min), max: toSi(entry.max) }, dimension, entry.unit, lang);
};

/** Every number of a sheet as printed, with the day it starts and where it comes from; later ones beneath earlier ones. */
export const printedLines = (sheet: DataSheet, lang: Lang) =>
	LINE_IDS.flatMap((id) =>
		(sheet.lines[id] ?? [])
			.toSorted((a, b) => a.from.localeCompare(b.from))
			.map((entry) => ({
				id: `${id} ${entry.from}`,
				label: say(SHEET_LINES[id].label, lang),
				value: printed(id, entry, lang),
				from: entry.from,
				provenance: provenanceView(entry.provenance)
			}))
	);
