import * as v from 'valibot';

export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/** Deeper than any ticket or sheet; keeps hostile nesting from exhausting the stack. */
const DEPTH = 48;

function isJson(value: unknown, depth: number): boolean {
	if (value === null || typeof value === 'boolean') return true;
	if (typeof value === 'number') return Number.isFinite(value);
	// RFC 8785 section 3.2.2.2: a lone surrogate has no canonical text
	if (typeof value === 'string') return value.isWellFormed();
	if (typeof value !== 'object' || depth === 0) return false;
	if (Array.isArray(value)) return value.every((item) => isJson(item, depth - 1));
	const prototype = Object.getPrototypeOf(value);
	if (prototype !== Object.prototype && prototype !== null) return false;
	return Object.entries(value).every(([key, item]) => key.isWellFormed() && isJson(item, depth - 1));
}

/** Any value that JSON can hold and that has one canonical text: finite numbers, well-formed strings. */
export const json = v.custom<Json>((value) => isJson(value, DEPTH), 'not plain JSON');
