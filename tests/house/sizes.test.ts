import { expect, test } from 'vitest';
import { filesUnder, textOf } from './files';

/** Tables of words, sources, sheets and defects, and the doors of layers, may be as long as what they list. */
const TABLES =
	/\/(engine\/index|i18n\/messages|pictures\/looks|sources|defects|coatings\/(sheets|lines|traits)|setup\/fields|shop\/values|units\/[a-z-]*units|drills\/(traps|world)|substrates|job\/examples|learning\/practical-(gates|readings))(\/|\.|-)/;

const lines = (path: string) => textOf(path).trimEnd().split('\n').length;
const modules = filesUnder('src').filter((path) => /\.(ts|js)$/.test(path) && !TABLES.test(path));
const components = filesUnder('src').filter((path) => path.endsWith('.svelte'));

const median = (numbers: number[]) => numbers.sort((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? 0;

test('modules are short: median at most 60 lines, none over 150', () => {
	expect(median(modules.map(lines))).toBeLessThanOrEqual(60);
	expect(modules.filter((path) => lines(path) > 150).map((path) => `${path}: ${lines(path)}`)).toEqual([]);
});

test('components are at most 120 lines, their style aside', () => {
	const long = components.filter(
		(path) =>
			textOf(path)
				.replace(/<style>[\s\S]*<\/style>/, '')
				.trimEnd()
				.split('\n').length > 120
	);
	expect(long).toEqual([]);
});

test('there is no drawer for things without a room', () => {
	const drawers = filesUnder('src').filter((path) =>
		/(^|\/)(utils?|helpers?|common|misc|shared|types)(\/|\.ts$)/.test(path)
	);
	expect(drawers).toEqual([]);
});
