import { describe, expect, test } from 'vitest';
import { filesUnder, textOf } from './files';
import { BANNED } from './banned-words';

const shown = [
	...filesUnder('src/lib/i18n/messages'),
	...filesUnder('content'),
	...filesUnder('src/lib').filter(
		(path) => /\/(engine|drills|learning)\//.test(path) && path.endsWith('.ts')
	),
	'README.md'
];

/** Comments speak to engineers; what is left is what people may read. */
const withoutComments = (text: string) => text.replace(/\/\*[\s\S]*?\*\/|(^|\s)\/\/.*$/gm, '');

describe('words of course and game programs', () => {
	test.each(shown)('%s has none', (path) => {
		expect(
			[...withoutComments(textOf(path)).matchAll(new RegExp(BANNED, 'giu'))].map(([word]) => word)
		).toEqual([]);
	});

	test('nor have the addresses of pages', () => {
		expect(filesUnder('src/routes').filter((path) => BANNED.test(path.replaceAll(/[-/]/g, ' ')))).toEqual([]);
	});
});
