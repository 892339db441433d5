import * as v from 'valibot';
import { SOURCES } from '../sources/sources';
import { UNITS } from '../units/units';
import { SHEET_LINES, type LineId } from './lines';
import { CUPS, FAMILIES, HAZARDS, THINNERS } from './traits';

/** More revisions of one number than a sheet ever sees. */
export const MOST_REVISIONS = 50;
const LONGEST_TEXT = 120;

const keys = <T extends object>(table: T) => Object.keys(table) as (keyof T & string)[];
const picked = <T extends object>(table: T) => v.picklist(keys(table));
const text = v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(LONGEST_TEXT));

/** `isoDate` looks at the shape only, and would let 30 February pass. */
const isOnCalendar = (date: string) => {
	const parsed = new Date(`${date}T00:00:00Z`);
	return !Number.isNaN(parsed.getTime()) && parsed.toISOString().startsWith(date);
};

/** Everything a sheet states besides numbers. */
export const headSchema = v.object({
	id: v.pipe(v.string(), v.maxLength(60), v.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)),
	title: text,
	lang: v.picklist(['en', 'es']),
	demo: v.boolean(),
	family: picked(FAMILIES),
	parts: v.picklist([1, 2]),
	basis: v.nullable(v.picklist(['volume', 'weight'])),
	thinner: v.nullable(picked(THINNERS)),
	cup: v.nullable(picked(CUPS)),
	rubSolvent: v.nullable(text),
	hazards: v.pipe(v.array(picked(HAZARDS)), v.maxLength(keys(HAZARDS).length)),
	filled: v.boolean()
});

export const provenanceSchema = v.object({
	origin: v.literal('data-sheet'),
	verification: v.union([v.literal('memory'), v.object({ read: text })]),
	source: v.optional(picked(SOURCES)),
	where: v.optional(text)
});

const number = v.pipe(v.number(), v.finite());

const base = (line: LineId) => ({
	from: v.pipe(v.string(), v.isoDate(), v.check(isOnCalendar)),
	unit: v.picklist(UNITS[SHEET_LINES[line].dimension].map(({ id }) => id)),
	provenance: provenanceSchema
});

/** One revision of a line: a single number, or a lowest and a highest one. */
const revisionSchema = (line: LineId) =>
	SHEET_LINES[line].shape === 'value'
		? v.object({ ...base(line), value: number })
		: v.object({ ...base(line), min: number, max: number });

/** All revisions of a line. The length is looked at before the entries, so that a huge list costs nothing. */
export const lineSchema = (line: LineId) =>
	v.pipe(v.array(v.unknown()), v.minLength(1), v.maxLength(MOST_REVISIONS), v.array(revisionSchema(line)));

/** Keys that may stand in each object of a sheet. */
export const KNOWN_KEYS = {
	sheet: [...keys(headSchema.entries), 'lines'],
	lines: keys(SHEET_LINES),
	revision: {
		value: ['from', 'unit', 'provenance', 'value'],
		window: ['from', 'unit', 'provenance', 'min', 'max']
	},
	provenance: keys(provenanceSchema.entries),
	verification: ['read']
} as const;
