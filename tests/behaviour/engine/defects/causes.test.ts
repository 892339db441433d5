import { describe, expect, test } from 'vitest';
import { causesOf } from '../../../../src/lib/engine/defects/causes';
import { DEFECTS, type DefectId } from '../../../../src/lib/engine/defects/defects';
import { RULES } from '../../../../src/lib/engine/rules';

const ids = Object.keys(DEFECTS) as DefectId[];

describe('causes of a defect', () => {
	test.each(ids)('%s comes out of at least one rule', (id) => {
		expect(causesOf(id)).not.toEqual([]);
	});

	test('are exactly what the rules say they break, each once', () => {
		const forward = RULES.flatMap(({ id, breaks }) =>
			Object.entries(breaks).flatMap(([direction, defects]) =>
				defects.map((defect) => `${id} ${direction} ${defect}`)
			)
		);
		const backward = ids.flatMap((defect) =>
			causesOf(defect).map(({ rule, direction }) => `${rule.id} ${direction} ${defect}`)
		);
		expect(backward.toSorted()).toEqual(forward.toSorted());
	});
});
