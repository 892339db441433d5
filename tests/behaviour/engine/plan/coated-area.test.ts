import { expect, test } from 'vitest';
import type { Part } from '../../../../src/lib/engine/job/part';
import { coatedArea } from '../../../../src/lib/engine/plan/coated-area';
import { metres } from '../../../../src/lib/engine/units/construct';
import { job, part } from '../rules/bench';

const one = (over: Partial<Part>) =>
	part({
		count: 1,
		length: metres(2),
		width: metres(1),
		height: metres(0.5),
		thickness: metres(0.1),
		...over
	});

test.each<[Part['shape'], number]>([
	['plate', 2 * (2 * 1)],
	['bracket', 2 * (2 * (1 + 0.5))],
	// inside 1.8 × 0.8 × 0.4
	['box', 2 * 1 + 2 * 0.5 * (2 + 1) + 1.8 * 0.8 + 2 * 0.4 * (1.8 + 0.8)],
	['bar', Math.PI * (1 * 2 + 1 / 2)],
	['tube', Math.PI * 1 * 2],
	['ring', Math.PI * ((1 - 0.64) / 2 + 2 * (1 + 0.8))]
])('a %s is coated over the faces the sheet asks for', (shape, expected) => {
	expect(coatedArea(job({ parts: [one({ shape })] }))!.value).toBeCloseTo(expected, 9);
});

test('pieces and parts add up, and the derivation names each', () => {
	const area = coatedArea(job({ parts: [one({ count: 3 }), one({ shape: 'tube' })] }))!;
	expect(area.value).toBeCloseTo(3 * 4 + Math.PI * 2, 9);
	expect(Object.keys(area.inputs)).toEqual(['part-1', 'part-2']);
	expect(area.inputs['part-1']!.inputs.pieces!.origin).toEqual({ kind: 'job', path: 'parts.0.count' });
});

test('a tube thinner than its two walls is taken as solid instead of failing', () => {
	expect(
		coatedArea(job({ parts: [one({ shape: 'ring', thickness: metres(0.2), width: metres(0.3) })] }))
	).toBeDefined();
});
