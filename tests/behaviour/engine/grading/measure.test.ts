import { describe, expect, it } from 'vitest';
import { measure } from '../../../../src/lib/engine/grading/measure';
import type { Expectation } from '../../../../src/lib/engine/rules/expectation';
import { celsius, fahrenheit, psi } from '../../../../src/lib/engine/units/construct';
import { atLeast, atMost, below, computed, range } from '../plan/demand';
import { choice, choices, order, quantity } from '../rules/bench';

/** Zone and direction of a number. */
const at = (value: number, expectation: Expectation) => {
	const { zone, off } = measure(quantity(value), expectation);
	return off ? `${zone} ${off}` : zone;
};

describe('a number', () => {
	it.each<[string, Expectation, readonly (readonly [number, string])[]]>([
		[
			'in a range',
			range(2, 4),
			[
				[2, 'green'],
				[3, 'green'],
				[4, 'green'],
				[1.9, 'red low'],
				[4.1, 'red high']
			]
		],
		[
			'at least',
			atLeast(2),
			[
				[2, 'green'],
				[1e6, 'green'],
				[1.9, 'red low']
			]
		],
		[
			'at most',
			atMost(4),
			[
				[4, 'green'],
				[-5, 'green'],
				[4.1, 'red high']
			]
		],
		[
			'below an open limit',
			below(4),
			[
				[3.999, 'green'],
				[4, 'red high'],
				[5, 'red high']
			]
		],
		[
			'computed',
			computed(10, 0.1),
			[
				[9, 'green'],
				[11, 'green'],
				[8.9, 'red low'],
				[11.1, 'red high']
			]
		],
		[
			'computed exactly',
			computed(10, 0),
			[
				[10, 'green'],
				[10.01, 'red high'],
				[9.99, 'red low']
			]
		]
	])('%s', (_name, expectation, cases) => {
		for (const [value, zone] of cases) expect([value, at(value, expectation)]).toEqual([value, zone]);
	});

	it('typed in another unit counts as the limit it names', () => {
		expect(at(fahrenheit(350.6), atMost(celsius(177), 'temperature'))).toBe('green');
		expect(at(psi(30), atMost(30 * 6894.757293168, 'pressure'))).toBe('green');
		expect(at(psi(30), below(30 * 6894.757293168, 'pressure'))).toBe('red high');
		expect(at(0.1 + 0.2, atMost(0.3))).toBe('green');
	});

	it('that is none is wrong, however wide the window', () => {
		for (const value of [NaN, Infinity, -Infinity])
			for (const expectation of [range(0, 1), atLeast(0), atMost(1), below(1), computed(1, 0.5)])
				expect(measure(quantity(value), expectation)).toEqual({
					zone: 'red',
					off: 'wrong',
					beyond: 0,
					credit: 0
				});
	});
});

describe('amber', () => {
	const slack = range(10, 20, 'length', 4);

	it('earns less the further out, and names how far and which way', () => {
		expect(measure(quantity(9), slack)).toEqual({ zone: 'amber', off: 'low', beyond: 1, credit: 0.75 });
		expect(measure(quantity(23), slack)).toEqual({ zone: 'amber', off: 'high', beyond: 3, credit: 0.25 });
		expect(measure(quantity(24), slack)).toEqual({ zone: 'amber', off: 'high', beyond: 4, credit: 0 });
	});

	it('ends: beyond it nothing is earned', () => {
		expect(measure(quantity(25), slack)).toEqual({ zone: 'red', off: 'high', beyond: 5, credit: 0 });
		expect(measure(quantity(5), slack)).toEqual({ zone: 'red', off: 'low', beyond: 5, credit: 0 });
	});

	it('is not there where a rule gives no slack', () => {
		expect(measure(quantity(9.999), range(10, 20)).zone).toBe('red');
	});

	it('never reaches into green', () => {
		expect(measure(quantity(10), slack)).toEqual({ zone: 'green', off: null, beyond: 0, credit: 1 });
	});
});

describe('options', () => {
	const verdict = (...given: Parameters<typeof measure>) => {
		const { zone, off } = measure(...given);
		return off ? `${zone} ${off}` : zone;
	};

	it('one of', () => {
		const expected: Expectation = { kind: 'one-of', options: ['ask', 'refuse'] };
		expect(verdict(choice('ask'), expected)).toBe('green');
		expect(verdict(choice('refuse'), expected)).toBe('green');
		expect(verdict(choice('accept'), expected)).toBe('red wrong');
		expect(verdict(choice(''), expected)).toBe('red wrong');
	});

	it('none of, for a single choice and for several', () => {
		const expected: Expectation = { kind: 'none-of', options: ['silica-sand'] };
		expect(verdict(choice('garnet'), expected)).toBe('green');
		expect(verdict(choice('silica-sand'), expected)).toBe('red wrong');
		expect(verdict(choices(), expected)).toBe('green');
		expect(verdict(choices('garnet', 'silica-sand'), expected)).toBe('red wrong');
	});

	it('all of: one missing is too little, one that is wrong beside them too much', () => {
		const expected: Expectation = { kind: 'all-of', options: ['a', 'b'], not: ['x'] };
		expect(verdict(choices('b', 'a'), expected)).toBe('green');
		expect(verdict(choices('a', 'b', 'open'), expected)).toBe('green');
		expect(verdict(choices('a'), expected)).toBe('red low');
		expect(verdict(choices(), expected)).toBe('red low');
		expect(verdict(choices('a', 'b', 'x'), expected)).toBe('red high');
		expect(verdict(choices('a', 'x'), expected)).toBe('red low');
	});

	it('in order: every pair, each option once', () => {
		const expected: Expectation = {
			kind: 'order',
			before: [
				['a', 'b'],
				['b', 'c']
			]
		};
		expect(verdict(order('a', 'b', 'c'), expected)).toBe('green');
		expect(verdict(order('z', 'a', 'b', 'y', 'c'), expected)).toBe('green');
		expect(verdict(order('b', 'a', 'c'), expected)).toBe('red wrong');
		expect(verdict(order('a', 'b'), expected)).toBe('red wrong');
		expect(verdict(order('a', 'b', 'c', 'a'), expected)).toBe('red wrong');
	});
});

describe('an answer that is missing or of the wrong kind', () => {
	const expectations: readonly Expectation[] = [
		range(0, 1),
		atLeast(0),
		atMost(1),
		below(1),
		computed(0.5, 1),
		{ kind: 'one-of', options: ['a'] },
		{ kind: 'none-of', options: ['x'] },
		{ kind: 'all-of', options: ['a'] },
		{ kind: 'order', before: [['a', 'b']] }
	];
	/** Each would pass if its kind were not looked at. */
	const answers = [quantity(0.5), choice('a'), choices('a'), order('a', 'b')];
	const takes = (kind: Expectation['kind']) =>
		({ 'one-of': ['choice'], 'none-of': ['choice', 'choices'], 'all-of': ['choices'], order: ['order'] })[
			kind as string
		] ?? ['quantity'];

	it.each(expectations)('is red where $kind is expected', (expectation) => {
		expect(measure(undefined, expectation).zone).toBe('red');
		for (const answer of answers)
			expect([answer.kind, measure(answer, expectation).zone]).toEqual([
				answer.kind,
				takes(expectation.kind).includes(answer.kind) ? 'green' : 'red'
			]);
	});
});
