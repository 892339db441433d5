import { basename } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { deviation, type Published } from './published';

const files = import.meta.glob<{ default: Published | readonly Published[] }>(
	['./*.ts', '!./*.test.ts', '!./*.d.ts', '!./published.ts'],
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
	});

	it.each(check.rows)('$where: $expected', (row) => {
		const off = deviation(check, row);
		if (off >= (worst.get(file)?.off ?? -1)) worst.set(file, { off, where: row.where });
		expect(off, `got ${row.actual()} ${check.unit}, expected ${row.expected}`).toBeLessThanOrEqual(1);
	});
});

describe('the checks as a whole', () => {
	it('are at least 40 facts from at least 12 sources', () => {
		expect(checks.flatMap(({ check }) => check.rows).length).toBeGreaterThanOrEqual(40);
		expect(new Set(checks.map(({ check }) => check.source)).size).toBeGreaterThanOrEqual(12);
	});

	it('still number so many without those from memory', () => {
		const read = checks.filter(({ check }) => check.read !== 'memory');
		expect(read.flatMap(({ check }) => check.rows).length).toBeGreaterThanOrEqual(40);
		expect(new Set(read.map(({ check }) => check.source)).size).toBeGreaterThanOrEqual(12);
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
