import { schemeDefaults } from './scheme-defaults';
import type { SchemeLimit } from './scheme-limit';

type Values<Limits extends Record<string, SchemeLimit>> = { readonly [Key in keyof Limits]: number };

/**
 * The numbers by which people are proven, signed and kept current, as in force from a day on. A new version never
 * changes a decision taken under an earlier one.
 */
export type Scheme = {
	readonly [Group in keyof typeof schemeDefaults]: Values<(typeof schemeDefaults)[Group]>;
};

const valuesOf = (limits: Record<string, SchemeLimit>) =>
	Object.fromEntries(Object.entries(limits).map(([key, { value }]) => [key, value]));

/** The scheme a shop starts with, until its lead changes it. */
export const defaultScheme = Object.fromEntries(
	Object.entries(schemeDefaults).map(([group, limits]) => [group, valuesOf(limits)])
) as unknown as Scheme;
