import { EXAMPLE_JOBS, RULES } from '$lib/engine';

/** Rules, example jobs and lists of values that a lesson's files name, in the words or in the drawings. */
export type Named = {
	readonly rules: readonly string[];
	readonly examples: readonly string[];
	/** Beginnings of the ids of shop values that it lists. */
	readonly values: readonly string[];
};

const LISTS = /<ShopValues\s[^>]*?start="([a-z.-]+)"/g;

/** Finds the ids that stand between quotes in the texts, so that a page is sent what it shows and no more. */
export function namedIn(texts: readonly string[]): Named {
	const quoted = new Set(
		texts.flatMap((text) => [...text.matchAll(/["']([a-z0-9-]+)["']/g)].map(([, id]) => id))
	);
	const among = (things: readonly { readonly id: string }[]) =>
		things.map(({ id }) => id).filter((id) => quoted.has(id));
	const values = new Set(texts.flatMap((text) => [...text.matchAll(LISTS)].map(([, start]) => start!)));
	return { rules: among(RULES), examples: among(EXAMPLE_JOBS), values: [...values] };
}
