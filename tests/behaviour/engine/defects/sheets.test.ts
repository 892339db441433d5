import { describe, expect, test } from 'vitest';
import { DEFECTS, type DefectId } from '../../../../src/lib/engine/defects/defects';
import { DEFECT_SHEETS } from '../../../../src/lib/engine/defects/sheets';

const ids = Object.keys(DEFECTS) as DefectId[];

describe('defect sheets', () => {
	test('are 38, each once', () => {
		expect(ids).toHaveLength(38);
		expect(Object.keys(DEFECT_SHEETS).toSorted()).toEqual(ids.toSorted());
	});

	test.each(ids)('%s is told in both languages, in sentences of its own', (id) => {
		for (const text of Object.values(DEFECT_SHEETS[id])) {
			expect(text.en).toMatch(/^\p{Lu}.{20,}\.$/u);
			expect(text.es).toMatch(/^\p{Lu}.{20,}\.$/u);
			expect(text.es).not.toBe(text.en);
		}
	});

	test('no two defects share a sentence', () => {
		const sentences = Object.values(DEFECT_SHEETS).flatMap((sheet) =>
			Object.values(sheet).flatMap(({ en, es }) => [en, es])
		);
		expect(new Set(sentences).size).toBe(sentences.length);
	});
});
