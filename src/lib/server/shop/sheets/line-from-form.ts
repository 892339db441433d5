import {
	parseQuantity,
	problemText,
	SHEET_LINES,
	UNITS,
	unitOf,
	type LineId,
	type Provenance,
	type SheetLine
} from '$lib/engine';
import { say, shopSheets, type Lang } from '$lib/i18n';
import { amountKeys, fieldOf, type AmountKey, type SheetEntries } from './sheet-fields';

/** A line as read: every revision of it, of which the last is the one in the form. */
export type ReadLine = {
	/** The last revision may hold what is no number or no date: whoever checks the sheet says so. */
	readonly revisions: readonly unknown[];
	readonly problems: Readonly<Record<string, string>>;
};

type Amounts = {
	unit: string;
	numbers: Partial<Record<AmountKey, number>>;
	problems: Record<string, string>;
};

/** Digits that survive a change of unit; what is beyond them comes from binary fractions. */
const EXACT = 12;

/** The numbers of a line, printed in one unit: the one typed with the first of them, else the one chosen. */
function readAmounts(id: LineId, entries: SheetEntries, lang: Lang): Amounts {
	const { dimension } = SHEET_LINES[id];
	const chosen = entries[fieldOf(id, 'unit')];
	const known = UNITS[dimension].some((unit) => unit.id === chosen);
	const read: Amounts = { unit: chosen, numbers: {}, problems: {} };
	for (const key of amountKeys(id)) {
		const parsed = parseQuantity(entries[fieldOf(id, key)], dimension, {
			lang,
			...(known ? { fallbackUnit: chosen } : {})
		});
		if (!parsed.ok) {
			read.problems[fieldOf(id, key)] = say(problemText(parsed.problem), lang);
			continue;
		}
		if (known && Object.keys(read.numbers).length === 0) read.unit = parsed.unit;
		const printed = unitOf(dimension, known ? read.unit : parsed.unit).fromSi(parsed.value);
		read.numbers[key] = Number(printed.toPrecision(EXACT));
	}
	return read;
}

/** What was read to check a line; an entry left as it was keeps its source and clause too. */
function provenance(
	id: LineId,
	entries: SheetEntries,
	before: SheetLine | undefined,
	lang: Lang
): { provenance: Provenance } | { problem: string } {
	const read = entries[fieldOf(id, 'read')].trim();
	const memory = entries[fieldOf(id, 'memory')] === 'yes';
	if (memory && read) return { problem: shopSheets[lang].readAndMemory };
	const text = memory ? '' : read || entries.commonRead.trim();
	if (!memory && !text) return { problem: shopSheets[lang].readMissing };
	const verified = before?.provenance.verification;
	const same = memory ? verified === 'memory' : verified !== 'memory' && verified?.read === text;
	return {
		provenance:
			before && same
				? before.provenance
				: { origin: 'data-sheet', verification: memory ? 'memory' : { read: text } }
	};
}

/**
 * A line of the form. It takes the place of what was to start on its day or later; what started before stays until then.
 * @param earlier the line as the sheet had it
 * @returns null where no number was typed: the sheet is silent
 */
export function lineFromForm(
	id: LineId,
	entries: SheetEntries,
	earlier: readonly SheetLine[],
	lang: Lang
): ReadLine | null {
	if (amountKeys(id).every((key) => !entries[fieldOf(id, key)].trim())) return null;
	const from = entries[fieldOf(id, 'from')] || entries.commonFrom;
	const { unit, numbers, problems } = readAmounts(id, entries, lang);
	const source = provenance(
		id,
		entries,
		earlier.find((each) => each.from === from),
		lang
	);
	if ('problem' in source) problems[fieldOf(id, 'read')] = source.problem;
	return {
		revisions: [
			...earlier.filter((each) => each.from < from),
			{ from, unit, ...numbers, provenance: 'problem' in source ? undefined : source.provenance }
		],
		problems
	};
}
