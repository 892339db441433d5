import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decide, decisionLines, defaultScheme, verdict, type SequentialPlan } from '$lib/learning';

const plan = defaultScheme.sequential;
const rights = (n: number) => Array<boolean>(n).fill(true);
const wrongs = (n: number) => Array<boolean>(n).fill(false);

describe('the lines of the shipped plan', () => {
	const lines = decisionLines(plan);
	it.each([
		['right', 0.251314],
		['wrong', -1.098612],
		['upper', 2.890372],
		['lower', -2.251292],
		['slope', 0.813831],
		['passIntercept', 2.141132],
		['failIntercept', -1.667714]
	] as const)('%s', (name, expected) => expect(lines[name]).toBeCloseTo(expected, 6));

	it.each([
		{ p0: 0.9, p1: 0.7, alpha: 0.05, beta: 0.1 },
		{ p0: 0, p1: 0.7, alpha: 0.05, beta: 0.1 },
		{ p0: 0.7, p1: 1, alpha: 0.05, beta: 0.1 },
		{ p0: 0.7, p1: 0.9, alpha: 0, beta: 0.1 },
		{ p0: 0.7, p1: 0.9, alpha: 0.5, beta: 0.5 },
		{ p0: NaN, p1: 0.9, alpha: 0.05, beta: 0.1 }
	])('refuses %o', (limits) => expect(() => decisionLines(limits)).toThrow(RangeError));
});

describe('where the shipped plan stops', () => {
	// With so many wrong: the first drill that passes, and the last one that fails.
	it.each([
		[0, 12, null],
		[1, 17, null],
		[2, 23, null],
		[3, 28, 7],
		[4, 33, 12],
		[5, 39, 17],
		[6, 44, 23]
	])('%i wrong: passes from drill %i, fails up to %s', (wrong, passesFrom, failsUpTo) => {
		expect(decide(plan, passesFrom, passesFrom - wrong).state).toBe('passed');
		expect(decide(plan, passesFrom - 1, passesFrom - 1 - wrong).state).toBe('open');
		if (failsUpTo === null) return;
		expect(decide(plan, failsUpTo, failsUpTo - wrong).state).toBe('failed');
		expect(decide(plan, failsUpTo + 1, failsUpTo + 1 - wrong).state).toBe('open');
	});

	it('decides at the last drill by the number of right ones', () => {
		expect(decide(plan, 45, 38).state).toBe('passed');
		expect(decide(plan, 45, 37).state).toBe('failed');
	});

	it('leaves a run undecided where the plan says so', () => {
		const undecided: SequentialPlan = { ...plan, passAtTruncation: null };
		expect(decide(undecided, 45, 38).state).toBe('undecided');
	});

	it('does not look before the first look', () => {
		expect(decide({ ...plan, firstLook: 14 }, 13, 13).state).toBe('open');
		expect(decide({ ...plan, firstLook: 14 }, 14, 14).state).toBe('passed');
	});
});

describe('a verdict', () => {
	it('is open before the first drill', () =>
		expect(verdict(plan, [])).toEqual({ state: 'open', n: 0, right: 0, ratio: 0 }));

	it('is open one drill before it passes', () => expect(verdict(plan, rights(11)).state).toBe('open'));

	it('passes at the twelfth right drill in a row', () => {
		const { state, n, right, ratio } = verdict(plan, rights(12));
		expect({ state, n, right }).toEqual({ state: 'passed', n: 12, right: 12 });
		expect(ratio).toBeCloseTo(12 * Math.log(0.9 / 0.7), 9);
	});

	it('fails at the third wrong drill in a row', () =>
		expect(verdict(plan, wrongs(5))).toMatchObject({ state: 'failed', n: 3, right: 0 }));

	it('stands whatever comes after it', () => {
		expect(verdict(plan, [...wrongs(3), ...rights(60)])).toMatchObject({ state: 'failed', n: 3 });
		expect(verdict(plan, [...rights(12), ...wrongs(9)])).toMatchObject({ state: 'passed', n: 12 });
	});

	it('falls for any run of the full length', () =>
		fc.assert(
			fc.property(fc.array(fc.boolean(), { minLength: 45, maxLength: 60 }), (outcomes) => {
				const { state, n } = verdict(plan, outcomes);
				return state !== 'open' && state !== 'undecided' && n <= 45;
			})
		));

	it('is never made worse by a right drill in place of a wrong one', () => {
		const rank = { failed: 0, undecided: 1, open: 1, passed: 2 };
		fc.assert(
			fc.property(fc.array(fc.boolean(), { minLength: 1, maxLength: 45 }), fc.nat(), (outcomes, at) => {
				const better = outcomes.with(at % outcomes.length, true);
				return rank[verdict(plan, better).state] >= rank[verdict(plan, outcomes).state];
			})
		);
	});
});
