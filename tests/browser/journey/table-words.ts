import type { Text } from '$lib/engine';
import type { Lang } from '$lib/i18n';

type Table = Record<string, Text>;

/** The key of a table whose words are exactly these. */
export function keyOf<T extends Table>(table: T, words: string, lang: Lang): keyof T & string {
	const key = Object.keys(table).find((one) => table[one]?.[lang] === words);
	if (key === undefined) throw new Error(`nothing is called "${words}"`);
	return key;
}

/** Keys of a table whose words stand in a list; longer words first, so that one name inside another is not counted. */
export function keysIn<T extends Table>(table: T, list: string, lang: Lang): (keyof T & string)[] {
	let left = list;
	return Object.keys(table)
		.sort((a, b) => (table[b]?.[lang].length ?? 0) - (table[a]?.[lang].length ?? 0))
		.filter((key) => {
			const words = table[key]?.[lang] ?? '';
			if (!left.includes(words)) return false;
			left = left.replace(words, '');
			return true;
		});
}
