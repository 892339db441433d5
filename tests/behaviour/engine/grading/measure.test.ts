import { describe, expect, it } from 'vitest';
import type { Answer } from '../../../../src/lib/engine/grading/answer';
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

describe('room at a limit', () => {
	/** A number as typed in a unit whose gauge shows steps of twice this. */
	const rounded = (value: number, rounding: number, expectation: Expectation) =>
		measure({ ...(quantity(value) as Extract<Answer, { kind: 'quantity' }>), rounding }, expectation).zone;

	it('is the last digits of the number and no more', () => {
		expect(at(1000 + 5e-7, atMost(1000))).toBe('green');
		expect(at(1000 + 2e-6, atMost(1000))).toBe('red high');
		expect(at(1000 - 5e-7, atLeast(1000))).toBe('green');
		expect(at(1000 - 2e-6, atLeast(1000))).toBe('red low');
	});

	it('is that of a millionth for numbers near nothing, its own edge included', () => {
		const room = 1e-9 * 1e-6;
		expect(at(room, atMost(0))).toBe('green');
		expect(at(2 * room, atMost(0))).toBe('red high');
		expect(at(-room, atLeast(0))).toBe('green');
		expect(at(-2 * room, atLeast(0))).toBe('red low');
	});

	it('is taken away from an open limit, so that rounding up to it does not pass', () => {
		const room = 1e-9 * 1e-6;
		expect(at(-room, below(0))).toBe('red high');
		expect(at(-2 * room, below(0))).toBe('green');
		expect(measure(quantity(4 - 1e-9), below(4))).toEqual({ zone: 'red', off: 'high', beyond: 0, credit: 0 });
	});

	it('grows by half the last digit the typed unit shows, on both sides', () => {
		expect(rounded(4.04, 0.05, atMost(4))).toBe('green');
		expect(rounded(4.06, 0.05, atMost(4))).toBe('red');
		expect(rounded(1.96, 0.05, atLeast(2))).toBe('green');
		expect(rounded(1.94, 0.05, atLeast(2))).toBe('red');
	});

	it('does not grow at an open limit, nor shrink what is below it', () => {
		expect(rounded(4, 0.05, below(4))).toBe('red');
		expect(rounded(3.98, 0.05, below(4))).toBe('green');
	});
});

describe('amber', () => {
	const slack = range(10, 20, 'length', 4);

	it('earns less the further out, and names how far and which way', () => {
		expect(measure(quantity(9), slack)).toEqual({ zone: 'amber', off: 'low', beyond: 1, credit: 0.75 });
		expect(measure(quantity(23), slack)).toEqual({ zone: 'amber', off: 'high', beyond: 3, credit: 0.25 });
		expect(measure(quantity(24), slack)).toEqual({ zone: 'amber', off: 'high', beyond: 4, credit: 0 });
	});

	it('is there below an open limit that gives slack', () => {
		expect(measure(quantity(5), below(4, 'length', 2))).toEqual({
			zone: 'amber',
			off: 'high',
			beyond: 1,
			credit: 0.5
		});
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

	it('all of: one of several wrong ones is too much already, and earns nothing', () => {
		const expected: Expectation = { kind: 'all-of', options: ['a'], not: ['x', 'y'] };
		expect(measure(choices('a', 'y'), expected)).toEqual({ zone: 'red', off: 'high', beyond: 0, credit: 0 });
		expect(measure(choices('y'), expected)).toEqual({ zone: 'red', off: 'low', beyond: 0, credit: 0 });
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
		expect(verdict(order('b', 'c'), expected)).toBe('red wrong');
	});

	it('in order: nothing comes before itself', () => {
		expect(verdict(order('a', 'b'), { kind: 'order', before: [['a', 'a']] })).toBe('red wrong');
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
		const none = { zone: 'red', off: 'wrong', beyond: 0, credit: 0 };
		expect(measure(undefined, expectation)).toEqual(none);
		expect(measure(null, expectation)).toEqual(none);
		for (const answer of answers)
			expect([answer.kind, measure(answer, expectation).zone]).toEqual([
				answer.kind,
				takes(expectation.kind).includes(answer.kind) ? 'green' : 'red'
			]);
	});

	it('is not taken for another kind by what it carries besides', () => {
		const everything = { value: 0.5, typed: '', option: 'a', options: ['a', 'b'] };
		for (const expectation of expectations)
			for (const kind of ['quantity', 'choice', 'choices', 'order'] as const)
				expect([kind, measure({ ...everything, kind } as Answer, expectation).zone]).toEqual([
					kind,
					takes(expectation.kind).includes(kind) ? 'green' : 'red'
				]);
	});
});
