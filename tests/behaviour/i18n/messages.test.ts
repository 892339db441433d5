import { describe, expect, it } from 'vitest';

type Words = { [key: string]: unknown };
type Screen = { en: Words; es: Words };

const files = import.meta.glob<Record<string, Screen>>('/src/lib/i18n/messages/*.ts', { eager: true });
const screens = Object.values(files).flatMap((file) => Object.entries(file));

/** Every text of a tree by its path; a text with parameters is called with its own placeholders. */
function texts(words: Words, path = ''): [string, string][] {
	return Object.entries(words).flatMap(([key, value]): [string, string][] => {
		const at = `${path}.${key}`;
		if (typeof value === 'string') return [[at, value]];
		if (typeof value === 'function') return [[at, `(${value.length})`]];
		if (Array.isArray(value)) return value.map((text, index) => [`${at}.${index}`, String(text)]);
		return texts(value as Words, at);
	});
}

it('finds the messages', () => expect(screens.length).toBeGreaterThanOrEqual(7));

describe.each(screens)('%s', (_, { en, es }) => {
	it('has the same texts in both languages, with as many parameters', () => {
		const shape = (words: Words) =>
			texts(words).map(([path, text]) => (text.startsWith('(') ? path + text : path));
		expect(shape(es)).toEqual(shape(en));
	});

	it('leaves no text empty', () => {
		const empty = [...texts(en), ...texts(es)].filter(([, text]) => !text.trim()).map(([path]) => path);
		expect(empty).toEqual([]);
	});

	it('repeats no English sentence in Spanish', () => {
		const english = new Map(texts(en));
		const same = texts(es).filter(([path, text]) => /\s\S+\s/.test(text) && english.get(path) === text);
		expect(same).toEqual([]);
	});
});
