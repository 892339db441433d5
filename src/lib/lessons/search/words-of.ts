/** A word of a text as it is compared, and where it stands. */
export type Word = { readonly plain: string; readonly at: number };

/** Without accents and capitals: who searches on a shop keyboard types neither. */
const plain = (text: string) => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();

/** Every word and number of a text in order. */
export const wordsOf = (text: string): readonly Word[] =>
	[...text.matchAll(/[\p{L}\p{N}\p{M}]+/gu)].map(({ 0: word, index }) => ({ plain: plain(word), at: index }));

/** Whether a word is the one asked for, its plural or singular, in English and Spanish alike, or begins with it. */
export function isAsked(word: string, asked: string): boolean {
	const singular = asked.length > 3 && asked.endsWith('s') ? asked.slice(0, -1) : asked;
	return (
		word.startsWith(singular) || (asked.length > 4 && asked.endsWith('es') && word === asked.slice(0, -2))
	);
}
