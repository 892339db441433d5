import { describe, expect, it } from 'vitest';
import { grade, rightAnswers } from '../../../../src/lib/engine/grading/grade';
import { choice, quantity } from '../rules/bench';
import { invented as plan } from './invented-plan';

const right = rightAnswers(plan);
const rules = (findings: readonly { readonly rule: string }[]) => findings.map(({ rule }) => rule);

describe('grading a set-up sheet', () => {
	it('finds nothing in the plan’s own answers', () => {
		expect(rightAnswers(plan)).toEqual({
			decision: choice('accept'),
			'gun-distance': quantity(0.15),
			'blow-off-pressure': quantity(1e5)
		});
		const findings = grade(plan, right);
		expect(findings).toMatchObject({ result: 'clear', breaches: [], safetyStops: [] });
		expect(rules(findings.all)).toEqual(['start', 'window', 'limit', 'air']);
	});

	it('says for each rule what came, what was expected and how far off it is', () => {
		const { breaches } = grade(plan, { ...right, 'gun-distance': quantity(0.225) });
		expect(breaches).toHaveLength(1);
		expect(breaches[0]).toMatchObject({
			field: 'gun-distance',
			rule: 'window',
			competency: 'spraying',
			severity: 'quality',
			received: quantity(0.225),
			expected: plan.fields[1]!.demands[0]!.expectation,
			zone: 'amber',
			off: 'high'
		});
		expect(breaches[0]!.beyond).toBeCloseTo(0.025, 12);
		expect(breaches[0]!.credit).toBeCloseTo(0.5, 12);
	});

	it('counts amber as a breach: the result is not clear', () => {
		expect(grade(plan, { ...right, 'gun-distance': quantity(0.21) }).result).toBe('findings');
	});

	it('finds every rule an answer breaks', () => {
		expect(rules(grade(plan, { ...right, 'gun-distance': quantity(0.5) }).breaches)).toEqual([
			'window',
			'limit'
		]);
	});

	it('lets a safety stop override whatever else is right or wrong', () => {
		const stop = grade(plan, { ...right, 'blow-off-pressure': quantity(2e5) });
		expect(stop.result).toBe('safety-stop');
		expect(rules(stop.safetyStops)).toEqual(['air']);
		const both = grade(plan, { decision: choice('ask'), 'blow-off-pressure': quantity(7e5) });
		expect(both.result).toBe('safety-stop');
		expect(rules(both.breaches)).toEqual(['start', 'window', 'limit', 'air']);
	});

	it('takes an empty field for a breach, and an empty safety field for a stop', () => {
		const without = { decision: right.decision!, 'blow-off-pressure': right['blow-off-pressure']! };
		expect(grade(plan, without).breaches.map(({ rule, received }) => [rule, received])).toEqual([
			['window', null],
			['limit', null]
		]);
		expect(grade(plan, {}).result).toBe('safety-stop');
	});

	it('looks only at the fields that were asked', () => {
		const findings = grade(plan, { decision: choice('ask') }, ['decision']);
		expect(rules(findings.all)).toEqual(['start']);
		expect(findings.result).toBe('findings');
		expect(grade(plan, { decision: choice('accept') }, ['decision']).result).toBe('clear');
	});

	it('does not grade by what a stronger authority replaced, nor fields the plan does not ask', () => {
		const findings = grade(plan, { ...right, coats: quantity(99) });
		expect(rules(findings.all)).not.toContain('weaker');
		expect(findings.result).toBe('clear');
	});
});
