import * as v from 'valibot';

/** Random or coded name of a thing. No spaces, so that no sentence and no full name fits in. */
export const id = v.pipe(v.string(), v.regex(/^[A-Za-z0-9][A-Za-z0-9._:/#-]{0,119}$/, 'not an id'));
export const ids = v.array(id);

/** Whether a text that somebody typed can stand in the record as the name of a thing. */
export const isId = (text: string): boolean => v.is(id, text);

/** SHA-256 as 64 lower-case hexadecimal digits. */
export const hash = v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/, 'not a SHA-256 hash'));

const isReal = (text: string) =>
	!Number.isNaN(Date.parse(text)) && new Date(text).toISOString().startsWith(text.slice(0, 10));

/** Moment in UTC, as `Date.prototype.toISOString` writes it. */
export const instant = v.pipe(
	v.string(),
	v.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/, 'not a moment in UTC'),
	v.check(isReal, 'no such moment')
);

/** Calendar day in the shop's own time zone. */
export const day = v.pipe(
	v.string(),
	v.regex(/^\d{4}-\d\d-\d\d$/, 'not a day'),
	v.check(isReal, 'no such day')
);

export const count = v.pipe(v.number(), v.integer(), v.minValue(0));
export const lang = v.picklist(['en', 'es']);

/** One revision of a data sheet, with its content named by hash. */
export const sheetRef = v.strictObject({ sheet: id, revision: count, hash });

/**
 * What the journal keeps of a name or of free text: where it lies, its salted hash, its language.
 * The words themselves are in the erasable store.
 */
export const textRef = v.strictObject({ text: id, hash, lang });
export type TextRef = v.InferOutput<typeof textRef>;

export const ROLES = ['trainee', 'supervisor', 'lead', 'auditor'] as const;
export const role = v.picklist(ROLES);
export type Role = v.InferOutput<typeof role>;
