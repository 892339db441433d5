import { SHEET_LINES, type LineId } from '$lib/engine';
import { allTyped } from '../all-typed';
import { LINE_IDS } from './line-rooms';

export type AmountKey = 'value' | 'min' | 'max';

export const amountKeys = (id: LineId): readonly AmountKey[] =>
	SHEET_LINES[id].shape === 'window' ? ['min', 'max'] : ['value'];

/** What is asked of a line besides its numbers. */
const LINE_KEYS = ['unit', 'from', 'read', 'memory'] as const;

const HEAD = [
	'title',
	'family',
	'basis',
	'thinner',
	'cup',
	'rubSolvent',
	'filled',
	'effective',
	'basedOn',
	'commonFrom',
	'commonRead'
] as const;
type HeadField = (typeof HEAD)[number];

export const fieldOf = (id: LineId, key: AmountKey | (typeof LINE_KEYS)[number]) => `${id}.${key}` as const;

/** A line as a whole, which must not be taken for the statement of the same name (thinner). */
export const lineOf = (id: LineId) => `line.${id}` as const;

const LINE_FIELDS = LINE_IDS.flatMap((id) =>
	[...amountKeys(id), ...LINE_KEYS].map((key) => fieldOf(id, key))
);

/** What was typed into the form of a data sheet, by field. */
export type SheetEntries = Readonly<Record<HeadField | (typeof LINE_FIELDS)[number], string>> & {
	readonly hazards: readonly string[];
};

const MOST_HAZARDS = 20;

/** The form of a data sheet as it was typed. */
export const sheetEntries = (form: FormData): SheetEntries => ({
	...allTyped(form, [...HEAD, ...LINE_FIELDS]),
	hazards: form
		.getAll('hazards')
		.slice(0, MOST_HAZARDS)
		.filter((each) => typeof each === 'string')
});

/** Stands in a choice for what the sheet does not name. */
export const NONE = 'none';
