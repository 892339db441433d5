import { expect, test } from 'vitest';
import { makePracticeDrill, type Breadth } from '$lib/drills';
import { grade, rightAnswers, type FieldId } from '$lib/engine';
import { demoShop } from '../shop';

const shop = demoShop();
const drills = Array.from({ length: 80 }, (_, seed) =>
	makePracticeDrill({ seed, breadth: ((seed % 3) + 1) as Breadth, shop, part: 'audit-the-ticket' })!
);

test('comes filled in to the last line, one to four of them wrong', () => {
	for (const { plan, filled } of drills) {
		expect(Object.keys(filled).sort()).toEqual(plan.fields.map(({ field }) => field).sort());
		const wrong = new Set(grade(plan, filled).breaches.map(({ field }) => field));
		expect(wrong.size).toBeGreaterThanOrEqual(1);
		expect(wrong.size).toBeLessThanOrEqual(4);
	}
});

test('is right as soon as the wrong lines are put right, and not before', () => {
	for (const { plan, filled } of drills) {
		const right = rightAnswers(plan);
		const wrong = [...new Set(grade(plan, filled).breaches.map(({ field }) => field))];
		const putRight = (fields: readonly FieldId[]) => ({
			...filled,
			...Object.fromEntries(fields.map((id) => [id, right[id]!]))
		});
		expect(grade(plan, putRight(wrong)).result).toBe('clear');
		expect(grade(plan, putRight(wrong.slice(1))).result).not.toBe('clear');
	}
});

test('is wrong beyond doubt, never just near a limit', () => {
	for (const { plan, filled } of drills)
		for (const { field } of grade(plan, filled).breaches)
			expect(
				grade(plan, filled)
					.all.filter((one) => one.field === field)
					.map(({ zone }) => zone)
			).toContain('red');
});

test('holds mixed-up units and passed limits, other options and other orders', () => {
	const kinds = new Set(
		drills.flatMap(({ plan, filled }) => grade(plan, filled).breaches.map(({ received }) => received?.kind))
	);
	expect([...kinds].sort()).toEqual(['choice', 'choices', 'order', 'quantity']);
});
