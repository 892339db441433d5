import { parse } from 'svelte/compiler';
import { describe, expect, test } from 'vitest';
import { filesUnder, textOf } from './files';

const LETTERS = /\p{L}{2,}/u;
const READ_ALOUD = ['aria-label', 'title', 'alt', 'placeholder', 'aria-description'];

type Node = { type: string; data?: string; name?: string; value?: unknown; [key: string]: unknown };

/** Literal words in a component's markup; words belong into the message modules, in both languages. */
function literals(node: unknown, found: string[] = []): string[] {
	if (Array.isArray(node)) node.forEach((one) => literals(one, found));
	else if (node && typeof node === 'object') {
		const { type, data, name, value } = node as Node;
		if (type === 'Text' && data && LETTERS.test(data)) found.push(data.trim());
		if (type === 'Attribute') {
			if (READ_ALOUD.includes(name ?? '')) literals(value, found);
			return found;
		}
		if (type === 'StyleSheet' || type === 'Comment') return found;
		for (const [key, one] of Object.entries(node))
			if (!['parent', 'instance', 'css'].includes(key)) literals(one, found);
	}
	return found;
}

const components = filesUnder('src').filter((path) => path.endsWith('.svelte'));

describe('untranslated text', () => {
	test('there are components to look at', () => expect(components.length).toBeGreaterThan(40));

	test.each(components)('%s has none', (path) => {
		expect(literals(parse(textOf(path), { modern: true }).fragment)).toEqual([]);
	});

	test('every message module holds both languages, checked by the compiler', () => {
		const modules = filesUnder('src/lib/i18n/messages').filter((path) => path.endsWith('.ts'));
		expect(modules.length).toBeGreaterThan(10);
		const loose = modules.filter(
			(path) => !/satisfies typeof en|: typeof en|Record<.*Text>|satisfies .*Record</s.test(textOf(path))
		);
		expect(loose).toEqual([]);
	});
});
