import { describe, expect, test } from 'vitest';
import { exportSheet } from '../../../../src/lib/engine/coatings/export-sheet';
import { SHEET_FORMAT } from '../../../../src/lib/engine/coatings/format-tag';
import { importSheet } from '../../../../src/lib/engine/coatings/import-sheet';
import { sheetJsonSchema } from '../../../../src/lib/engine/coatings/json-schema';
import { SHEET_LINES } from '../../../../src/lib/engine/coatings/lines';
import { DEMO_SHEETS } from '../../../../src/lib/engine/coatings/sheets';

test.each(DEMO_SHEETS)('$id survives the way out and back', (sheet) => {
	const file = exportSheet(sheet);
	expect(JSON.parse(file).format).toBe('witness-panel/data-sheet@1');
	expect(importSheet(file)).toEqual({ ok: true, sheet });
});

describe('files that are refused', () => {
	const [sheet] = DEMO_SHEETS;
	const file = exportSheet(sheet!);
	test.each([
		['cut off', file.slice(0, 500), ''],
		['empty', '', ''],
		['a list', '[]', ''],
		['of another format', file.replace(SHEET_FORMAT, 'witness-panel/data-sheet@2'), 'format'],
		['without a format', JSON.stringify(sheet), 'format'],
		['huge', ' '.repeat(600_000), ''],
		['deeply nested', '['.repeat(100_000), ''],
		['with a number beyond all numbers', file.replace('"max": 40', '"max": 1e999'), 'lines.dry-film.0.max']
	])('%s', (_name, content, path) => {
		const result = importSheet(content);
		expect(result.ok ? [] : result.problems.map((problem) => problem.path)).toEqual([path]);
	});
});

test('the published layout names every line, and nothing besides', () => {
	const { properties } = sheetJsonSchema() as unknown as {
		properties: { lines: { properties: object }; format: { const: string } };
	};
	expect(Object.keys(properties.lines.properties)).toEqual(Object.keys(SHEET_LINES));
	expect(Object.keys(properties).sort()).toEqual(['format', ...Object.keys(DEMO_SHEETS[0]!)].sort());
});
