import { describe, expect, test } from 'vitest';
import { RULES, UNITS, type Dimension } from '$lib/engine';
import { LESSONS } from '$lib/lessons';
import { filesUnder, textOf } from './files';

const LANGS = ['en', 'es'] as const;
const folders = [...new Set(filesUnder('content').map((path) => path.split('/')[1]!))].toSorted();
const slugOf = (folder: string) => folder.replace(/^\d+-/, '');
const lessonText = (folder: string, lang: string) => textOf(`content/${folder}/${lang}.md`);
const every = folders.flatMap((folder) => LANGS.map((lang) => [folder, lang] as const));

test('there are at least eight lessons, each in both languages, with checks and a figure', () => {
	expect(folders.length).toBeGreaterThanOrEqual(8);
	const files = new Set(filesUnder('content'));
	for (const folder of folders) {
		for (const name of ['en.md', 'es.md', 'checks.ts']) expect(files).toContain(`content/${folder}/${name}`);
		const figures = [...files].filter(
			(path) =>
				path.startsWith(`content/${folder}/`) && path.endsWith('.svelte') && /<svg[\s>]/.test(textOf(path))
		);
		expect([folder, figures.length]).not.toEqual([folder, 0]);
		for (const figure of figures)
			for (const lang of LANGS) expect(lessonText(folder, lang)).toContain(`'./${figure.split('/').at(-1)}'`);
	}
});

describe.each(LANGS)('in %s', (lang) => {
	const sections = folders.flatMap((folder) =>
		[...lessonText(folder, lang).matchAll(/<RuleSection\s+id="([^"]+)">([\s\S]*?)<\/RuleSection>/g)].map(
			([, id = '', prose = '']) => ({
				at: `${slugOf(folder)}#${id}`,
				words: prose.trim().split(/\s+/).length
			})
		)
	);

	test('each rule has exactly the one section that it links to, and no section lacks its rule', () => {
		expect(sections.map(({ at }) => at).toSorted()).toEqual(RULES.map(({ lesson }) => lesson).toSorted());
	});

	test('each section says more than its number', () => {
		expect(sections.filter(({ words }) => words < 25)).toEqual([]);
	});
});

/** Ids, labels and spellings of every unit a lesson could write out; a bare count is no unit. */
const unitWords = (Object.keys(UNITS) as Dimension[])
	.filter((dimension) => dimension !== 'count' && dimension !== 'ratio')
	.flatMap((dimension) => UNITS[dimension])
	.flatMap(({ id, label, spellings }) => [id, label.en, label.es, ...spellings])
	.filter((word) => word.length > 0)
	.map((word) => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
	.toSorted((a, b) => b.length - a.length);
const MEASURED = new RegExp(`\\d\\s?(?:${unitWords.join('|')})(?![\\p{L}\\d])`, 'giu');

/** What a reader sees as prose; front matter, script, worked examples and blocks' attributes taken out. */
const proseOf = (text: string) =>
	text
		.replace(/^---[\s\S]*?---/, '')
		.replace(/<script[\s\S]*?<\/script>/, '')
		.replace(/<WorkedExample>[\s\S]*?<\/WorkedExample>/g, '')
		.replace(/\b(id|rule|example|signal)="[^"]*"/g, '');

test('the search for written-out numbers finds some', () => {
	for (const written of ['at 80 psi', 'auf 5,9 bar', 'a 150 °C', '20 minutos', '90%', '0.8 mil'])
		expect([written, written.match(MEASURED)?.length]).toEqual([written, 1]);
	for (const free of ['two coats', 'rule 3', 'P320 paper', 'ISO 2409']) expect(free).not.toMatch(MEASURED);
});

test.each(every)('%s/%s writes out no number with its unit: they come from the engine', (folder, lang) => {
	expect(proseOf(lessonText(folder, lang)).match(MEASURED) ?? []).toEqual([]);
});

test.each(every)('%s/%s warns with all four parts of a warning', (folder, lang) => {
	for (const [, attributes = ''] of lessonText(folder, lang).matchAll(/<CautionBlock([\s\S]*?)\/>/g))
		expect(attributes).toMatch(
			/signal="(danger|warning|caution|notice)"[\s\S]*hazard="[\s\S]*consequence="[\s\S]*avoid="/
		);
});

/** Ids of the sums in the order they stand in a lesson. */
const sumsIn = (folder: string, lang: string) =>
	[...lessonText(folder, lang).matchAll(/<BenchSum\s+id="([^"]*)"/g)].map(([, id]) => id!);

test('lessons work out at least twenty sums', () => {
	expect(folders.flatMap((folder) => sumsIn(folder, 'en')).length).toBeGreaterThanOrEqual(20);
});

test.each(folders)('%s works out the same sums in both languages, each that it declares once', (folder) => {
	expect(sumsIn(folder, 'es')).toEqual(sumsIn(folder, 'en'));
	const declared = LESSONS.find((lesson) => lesson.folder === folder)!.sums.map(({ id }) => id);
	expect(sumsIn(folder, 'en').toSorted()).toEqual(declared.toSorted());
});

test('a sum asks in words: its numbers are given with their units below', () => {
	const asked = LESSONS.flatMap(({ sums }) => sums.flatMap(({ asks }) => [asks.en, asks.es]));
	expect(asked.filter((text) => text.match(MEASURED))).toEqual([]);
	expect(asked.filter((text) => !/[.?:]$/.test(text))).toEqual([]);
});
