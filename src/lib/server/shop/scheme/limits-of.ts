import { schemeDefaults, type Scheme, type SchemeLimit } from '$lib/learning';

export type SchemeGroup = keyof Scheme;

/** A limit of the scheme with the place it has in it. */
export type PlacedLimit = {
	readonly group: SchemeGroup;
	readonly key: string;
	/** `group.key`, as the scheme's own problems and the form's fields name it. */
	readonly at: string;
	readonly limit: SchemeLimit;
};

/** Every limit of a scheme, in order. */
export const LIMITS: readonly PlacedLimit[] = Object.entries(schemeDefaults).flatMap(([group, limits]) =>
	Object.entries(limits as Record<string, SchemeLimit>).map(([key, limit]) => ({
		group: group as SchemeGroup,
		key,
		at: `${group}.${key}`,
		limit
	}))
);

export const SCHEME_GROUPS = Object.keys(schemeDefaults) as SchemeGroup[];

/** One number of a scheme. */
export const numberOf = (scheme: Scheme, { group, key }: PlacedLimit): number =>
	(scheme[group] as Readonly<Record<string, number>>)[key]!;
