import { typed } from '../typed';

/** Longer than anything these forms take; what is beyond is cut before it is looked at or sent back. */
const LONGEST = 2000;

/** The texts of the named fields of a form, as typed. */
export const allTyped = <Field extends string>(
	form: FormData,
	fields: readonly Field[]
): Record<Field, string> =>
	Object.fromEntries(fields.map((field) => [field, typed(form, field).slice(0, LONGEST)])) as Record<
		Field,
		string
	>;
