import { describe, expect, test } from 'vitest';
import { BENCH_FIELDS, DEFECTS, DEMO_SHEETS, FIELDS, RULES } from '$lib/engine';
import { filesUnder, textOf } from './files';

const named = (folder: string, end: string) =>
	new Map(
		filesUnder(folder)
			.filter((path) => path.endsWith(end))
			.map((path) => [path.split('/').at(-1)!.slice(0, -end.length), path])
	);
const sources = named('src/lib/engine/rules', '.ts');
const tests = named('tests/behaviour/engine/rules', '.test.ts');

describe('rules', () => {
	test('are at least sixty, each once', () => {
		expect(RULES.length).toBeGreaterThanOrEqual(60);
		expect(new Set(RULES.map(({ id }) => id)).size).toBe(RULES.length);
	});

	test('are one file and one test each, of the same name', () => {
		expect(RULES.filter(({ id }) => !sources.has(id)).map(({ id }) => id)).toEqual([]);
		expect(RULES.filter(({ id }) => !tests.has(id)).map(({ id }) => id)).toEqual([]);
	});

	test('that exist as a file stand in the list', () => {
		const listed = new Set(RULES.map(({ id }) => id));
		const rules = [...sources].filter(([, path]) => textOf(path).includes('satisfies Rule'));
		expect(rules.filter(([id]) => !listed.has(id)).map(([, path]) => path)).toEqual([]);
	});

	test('have a job on which an answer passes and one on which an answer fails', () => {
		const bare = [...tests].filter(([, path]) => {
			const text = textOf(path);
			return (
				!/ruleCases\(\s*rule/.test(text) || !/passes: \[\s*\S/.test(text) || !/fails: \[\s*\S/.test(text)
			);
		});
		// windows-meet is called by solve alone and tested there
		expect(bare.map(([id]) => id).filter((id) => id !== 'windows-meet')).toEqual([]);
	});

	test('speak of fields and defects that exist, and say where they are taught', () => {
		for (const rule of RULES) {
			expect(FIELDS).toHaveProperty([rule.field]);
			for (const defect of Object.values(rule.breaks).flat()) expect(DEFECTS).toHaveProperty([defect]);
			expect(rule.lesson).toMatch(new RegExp(`^[a-z-]+#${rule.id}$`));
		}
	});

	test('cover every field of the set-up sheet', () => {
		const asked = new Set<string>(RULES.map(({ field }) => field));
		const ofTheSheet = Object.keys(FIELDS).filter((id) => !Object.hasOwn(BENCH_FIELDS, id));
		expect(ofTheSheet.filter((id) => !asked.has(id))).toEqual([]);
		expect(Object.keys(BENCH_FIELDS).filter((id) => asked.has(id))).toEqual([]);
	});
});

test('the demo shop has a data sheet for each of the six families', () => {
	expect(DEMO_SHEETS.map(({ family }) => family).sort()).toEqual(['A', 'B', 'C', 'D', 'E', 'F']);
});
