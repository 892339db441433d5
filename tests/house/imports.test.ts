import { dirname, join, normalize } from 'node:path';
import { describe, expect, test } from 'vitest';
import { filesUnder, textOf } from './files';

/** Who may import whom: the house's one-way streets. */
const MAY_IMPORT: Record<string, readonly string[]> = {
	i18n: [],
	engine: [],
	pictures: [],
	drills: ['engine'],
	learning: ['engine'],
	records: ['engine', 'learning'],
	paper: ['engine', 'drills', 'i18n', 'pictures'],
	ui: ['engine', 'i18n', 'pictures'],
	lessons: ['engine', 'i18n', 'paper', 'pictures', 'ui'],
	server: ['engine', 'i18n', 'drills', 'learning', 'records', 'paper', 'pictures'],
	routes: ['engine', 'i18n', 'drills', 'learning', 'records', 'paper', 'pictures', 'ui', 'lessons', 'server'],
	content: ['lessons', 'engine', 'ui']
};

/** Second doors, each with its reason. */
const DOORS = new Map([
	// lessons in Markdown embed blocks, which a server module must never pull in
	['$lib/lessons/blocks', ['content', 'routes']]
]);

type Import = { readonly from: string; readonly to: string; readonly typeOnly: boolean };

const IMPORT =
	/(?:^|[\n;])\s*(import|export)(\s+type)?\s[^'"`;]*?from\s*['"]([^'"]+)['"]|import\(\s*['"]([^'"]+)['"]\s*\)/g;

const importsOf = (path: string): Import[] =>
	[...textOf(path).matchAll(IMPORT)].map((found) => ({
		from: path,
		to: found[3] ?? found[4] ?? '',
		typeOnly: Boolean(found[2])
	}));

const layerOf = (path: string): string | undefined =>
	path.startsWith('content/')
		? 'content'
		: path.startsWith('src/routes/')
			? 'routes'
			: /^src\/lib\/([^/]+)\//.exec(path)?.[1];

const target = ({ from, to }: Import): string | undefined => {
	if (to.startsWith('$lib/')) return `src/lib/${to.slice(5)}`;
	if (to.startsWith('.')) return normalize(join(dirname(from), to));
	return undefined;
};

const files = [...filesUnder('src'), ...filesUnder('content')].filter((path) =>
	/\.(ts|js|svelte|md)$/.test(path)
);
const imports = files.flatMap(importsOf);

describe('imports', () => {
	test('are found at all', () => {
		expect(files.length).toBeGreaterThan(200);
		expect(imports.length).toBeGreaterThan(500);
	});

	test('go one way', () => {
		const wrong = imports.filter((one) => {
			const [from, to] = [layerOf(one.from), layerOf(`${target(one) ?? ''}/`)];
			return from && to && from !== to && MAY_IMPORT[from] && !MAY_IMPORT[from].includes(to);
		});
		expect(wrong.map(({ from, to }) => `${from} -> ${to}`)).toEqual([]);
	});

	test('name only layers that have a place in the table', () => {
		const layers = new Set(filesUnder('src/lib').map((path) => /^src\/lib\/([^/]+)\//.exec(path)?.[1]));
		expect([...layers].filter((layer) => !layer || !MAY_IMPORT[layer])).toEqual([]);
	});

	test('enter a layer by its door', () => {
		const wrong = imports.filter((one) => {
			const at = target(one);
			const [from, to] = [layerOf(one.from), at && layerOf(`${at}/`)];
			if (!at || !to || !from || from === to || to === 'content' || to === 'routes') return false;
			if (DOORS.get(one.to)?.includes(from)) return false;
			return !(one.to === `$lib/${to}`);
		});
		expect(wrong.map(({ from, to }) => `${from} -> ${to}`)).toEqual([]);
	});

	test('of the engine by components are types only: no rule travels with a page', () => {
		const wrong = imports.filter(
			({ from, to, typeOnly }) =>
				to === '$lib/engine' &&
				!typeOnly &&
				(layerOf(from) === 'ui' ||
					(layerOf(from) === 'routes' && from.endsWith('.svelte')) ||
					// sums are worked out on the server; what else lies in content/ goes to the browser with the prose
					(layerOf(from) === 'content' && !from.endsWith('/sums.ts')))
		);
		expect(wrong.map(({ from }) => from)).toEqual([]);
	});

	test('never come from routes', () => {
		expect(
			imports.filter((one) => layerOf(one.from) !== 'routes' && target(one)?.startsWith('src/routes')).length
		).toBe(0);
	});
});

describe('the pure layers', () => {
	const pure = files.filter((path) => /^src\/lib\/(engine|drills|learning|paper|pictures)\//.test(path));
	test.each([
		['the clock', /\bDate\.now\b|new Date\(\s*\)|performance\.now/],
		['chance', /Math\.random|randomUUID|getRandomValues/],
		['disk, network, process', /from ['"]node:|\bfetch\(|\bprocess\.|\bsetTimeout\(/],
		['the screen', /from ['"]svelte|\$app\/|\bdocument\.|\bglobalThis\b/]
	])('do not reach for %s', (_what, pattern) => {
		expect(pure.length).toBeGreaterThan(150);
		expect(pure.filter((path) => pattern.test(textOf(path)))).toEqual([]);
	});
});
