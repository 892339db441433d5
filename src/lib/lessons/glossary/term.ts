import type { Text } from '$lib/engine';

/** A word of the trade. */
export type Term = {
	/** Anchor on the page of the glossary. */
	readonly id: string;
	readonly term: Text;
	/** In own words, at most thirty. */
	readonly meaning: Text;
	/** Slug of the lesson that teaches it. */
	readonly lesson?: string;
};
