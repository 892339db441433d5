import { describe, expect, test } from 'vitest';
import { measure } from '../../../../../src/lib/engine/grading/measure';
import { situation } from '../../../../../src/lib/engine/plan/situation';
import { solve } from '../../../../../src/lib/engine/plan/solve';
import { RULES } from '../../../../../src/lib/engine/rules';
import rule from '../../../../../src/lib/engine/rules/intake/windows-meet';
import type { Shop } from '../../../../../src/lib/engine/shop/shop';
import { millimetres } from '../../../../../src/lib/engine/units/construct';
import { choice, job, part, shop } from '../bench';

/** A shop that has typed its stand-off the wrong way round. */
const reversed: Shop = {
	...shop,
	settings: { 'blast.stand-off': { from: '2026-01-01', min: millimetres(200), max: millimetres(100) } }
};

describe('windows-meet', () => {
	test('stands in the list once and never speaks of its own accord', () => {
		expect(RULES.filter(({ id }) => id === 'windows-meet')).toEqual([rule]);
		expect(rule.applies()).toBe(false);
		expect(solve(job(), shop).reasons).toEqual([]);
	});

	test('asks where limits leave no value', () => {
		const plan = solve(job(), reversed);
		expect(plan).toMatchObject({
			decision: 'ask',
			reasons: ['windows-meet'],
			conflicts: [{ field: 'blast-standoff', rules: ['blast-stand-off'] }]
		});
		const expectation = plan.fields.find(({ field }) => field === 'decision')!.demands[0]!.expectation;
		expect(measure(choice('ask'), expectation).zone).toBe('green');
		expect(measure(choice('accept'), expectation)).toMatchObject({ zone: 'red', off: 'wrong' });
	});

	test('is silent where those limits do not concern the job', () => {
		const laminate = job({
			parts: [part({ material: 'carbon-laminate', magnetSticks: false })],
			coating: 'demo-a-isocyanate'
		});
		expect(situation(laminate, reversed)).toBeDefined();
		expect(solve(laminate, reversed)).toMatchObject({ decision: 'accept', conflicts: [] });
	});
});
