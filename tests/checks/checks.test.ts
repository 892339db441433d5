import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { format, resolveConfig } from 'prettier';
import { afterAll, describe, expect, it } from 'vitest';
import { deviation, type Published } from './published';
import { CHECKABLE, counted, summary, titleOf } from './summary';

const files = import.meta.glob<{ default: Published | readonly Published[] }>(
	[
		'./*.ts',
		'!./*.test.ts',
		'!./*.d.ts',
		'!./{published,summary,reference-libraries,common-practice,material-row}.ts'
	],
	{ eager: true }
);

const checks = Object.entries(files).flatMap(([path, file]) =>
	[file.default].flat().map((check) => ({ file: basename(path, '.ts'), check }))
);
const worst = new Map<string, { off: number; where: string }>();

describe.each(checks)('$file: $check.title', ({ file, check }) => {
	it('lies in a file named after its source', () => {
		expect(file === check.source || file.startsWith(`${check.source}-`)).toBe(true);
		expect(check.within.because).not.toBe('');
		expect(titleOf(check.source), 'a publication of the list, or a reference library').toBeTruthy();
	});

	it('says what it checks', () => {
		expect(check.of.length).toBeGreaterThan(0);
		expect(CHECKABLE).toEqual(expect.arrayContaining([...check.of]));
	});

	it.each(check.rows)('$where: $expected', (row) => {
		const off = deviation(check, row);
		if (off >= (worst.get(file)?.off ?? -1)) worst.set(file, { off, where: row.where });
		expect(off, `got ${row.actual()} ${check.unit}, expected ${row.expected}`).toBeLessThanOrEqual(1);
	});
});

describe('the checks as a whole', () => {
	const published = checks.map(({ check }) => check);

	it('are at least 200 counted facts of the trade from at least 30 sources', () => {
		const { facts, sources } = counted(published);
		expect(facts).toBeGreaterThanOrEqual(200);
		expect(sources).toBeGreaterThanOrEqual(30);
	});

	it('still are so many without those from memory', () => {
		const { facts, sources } = counted(published.filter(({ read }) => read !== 'memory'));
		expect(facts).toBeGreaterThanOrEqual(200);
		expect(sources).toBeGreaterThanOrEqual(30);
	});

	it('stand in the table the program shows; vitest -u writes it anew', async () => {
		const style = await resolveConfig(fileURLToPath(import.meta.url));
		const table = await format(JSON.stringify(summary(published)), { ...style, parser: 'json' });
		await expect(table).toMatchFileSnapshot('../../src/lib/server/rules/checks.json');
	});

	it('would notice a wrong number', () => {
		for (const { check } of checks)
			for (const row of check.rows) {
				const wrong = typeof row.expected === 'number' ? row.expected * 1.2 + 1e-3 : !row.expected;
				expect(
					deviation(check, { ...row, actual: () => wrong }),
					`${check.source}, ${row.where}`
				).toBeGreaterThan(1);
			}
	});
});

afterAll(() => {
	const sources = new Set(checks.map(({ check }) => check.source));
	const lines = [...worst].map(
		([file, { off, where }]) => `  ${file}: worst ${(off * 100).toFixed(1)} % of its tolerance, at ${where}`
	);
	const memory = checks.filter(({ check }) => check.read === 'memory');
	console.log(
		[
			`${checks.flatMap(({ check }) => check.rows).length} facts from ${sources.size} sources`,
			...lines,
			'from memory, to be read:',
			...memory.map(({ file, check }) => `  ${file}: ${check.title}`)
		].join('\n')
	);
});
