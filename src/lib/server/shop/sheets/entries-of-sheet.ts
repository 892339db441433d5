import { DEMO_SHEETS, SHEET_LINES, UNITS, type DataSheet, type LineId, type SheetLine } from '$lib/engine';
import type { Lang } from '$lib/i18n';
import { LINE_IDS } from './line-rooms';
import { amountKeys, fieldOf, NONE, type SheetEntries } from './sheet-fields';

const MOST_DECIMALS = 15;

/**
 * A printed number as the form reads it back. Three decimals after a point are ambiguous to Spanish readers, who may
 * part thousands with it; a zero more is not.
 */
const typedNumber = (value: number, lang: Lang): string => {
	const digits = value.toLocaleString('en-US', {
		useGrouping: false,
		maximumFractionDigits: MOST_DECIMALS
	});
	return lang === 'es' && /^-?[1-9]\d{0,2}\.\d{3}$/.test(digits) ? `${digits}0` : digits;
};

const newest = (revisions: readonly SheetLine[] | undefined): SheetLine | undefined =>
	revisions?.reduce((latest, each) => (each.from >= latest.from ? each : latest));

/** The unit sheets print a line in, where the form has nothing better to offer. */
const usualUnit = (id: LineId): string =>
	DEMO_SHEETS.map(({ lines }) => (lines as DataSheet['lines'])[id]?.[0]?.unit).find(
		(unit) => unit !== undefined
	) ??
	UNITS[SHEET_LINES[id].dimension][0]?.id ??
	'';

function lineEntries(id: LineId, line: SheetLine | undefined, lang: Lang): [string, string][] {
	const verified = line?.provenance.verification;
	const numbers = line as unknown as Readonly<Record<string, number>> | undefined;
	return [
		...amountKeys(id).map((key): [string, string] => [
			fieldOf(id, key),
			numbers ? typedNumber(numbers[key]!, lang) : ''
		]),
		[fieldOf(id, 'unit'), line?.unit ?? usualUnit(id)],
		[fieldOf(id, 'from'), line?.from ?? ''],
		[fieldOf(id, 'read'), typeof verified === 'object' ? verified.read : ''],
		[fieldOf(id, 'memory'), verified === 'memory' ? 'yes' : '']
	];
}

/**
 * The form of a data sheet filled with a sheet as its newest lines state it, or empty for a new one.
 * @param today where a change starts unless another day is chosen
 */
export const entriesOfSheet = (
	sheet: DataSheet | null,
	{ revision, today, lang }: { revision: number; today: string; lang: Lang }
): SheetEntries =>
	({
		title: sheet?.title ?? '',
		family: sheet?.family ?? '',
		basis: sheet ? (sheet.basis ?? NONE) : '',
		thinner: sheet ? (sheet.thinner ?? NONE) : '',
		cup: sheet ? (sheet.cup ?? NONE) : '',
		rubSolvent: sheet?.rubSolvent ?? '',
		filled: sheet ? (sheet.filled ? 'yes' : 'no') : '',
		hazards: sheet?.hazards ?? [],
		effective: today,
		basedOn: String(revision),
		commonFrom: sheet ? '' : today,
		commonRead: '',
		...Object.fromEntries(LINE_IDS.flatMap((id) => lineEntries(id, newest(sheet?.lines[id]), lang)))
	}) as SheetEntries;
