import { describe, expect, it } from 'vitest';
import { settle } from '../../../../src/lib/engine/plan/settle';
import { choice, choices, order, quantity } from '../rules/bench';
import { atLeast, atMost, below, demand, range } from './demand';

const rulesOf = (demands: readonly { readonly rule: string }[]) => demands.map(({ rule }) => rule);

/** What was settled, in short. */
const settled = (...given: Parameters<typeof settle>) => {
	const planned = settle(...given);
	if (!('answer' in planned)) return { clash: planned.rules };
	return {
		answer: planned.answer,
		kept: rulesOf(planned.demands),
		superseded: rulesOf(planned.superseded)
	};
};

describe('windows on one field', () => {
	it('of one rank all hold, so the stricter governs', () => {
		const demands = [demand('wide', range(0.1, 0.3)), demand('narrow', range(0.2, 0.4))];
		expect(settled('gun-distance', demands)).toEqual({
			answer: quantity(0.25),
			kept: ['wide', 'narrow'],
			superseded: []
		});
	});

	it('of a weaker authority give way whole', () => {
		const demands = [
			demand('shop', range(0.1, 0.2)),
			demand('sheet', range(0.125, 0.375), { authority: 'data-sheet' }),
			demand('tool', range(0.5, 0.6), { authority: 'tool' })
		];
		expect(settled('gun-distance', demands)).toEqual({
			answer: quantity(0.25),
			kept: ['sheet'],
			superseded: ['shop', 'tool']
		});
	});

	it.each(['law', 'safety-data-sheet', 'part-limit'] as const)('are cut by a hard limit: %s', (authority) => {
		const demands = [
			demand('drawing', range(0.1, 0.3), { authority: 'customer' }),
			demand('hard', atMost(0.2), { authority })
		];
		expect(settled('gun-distance', demands)).toEqual({
			answer: quantity((0.1 + 0.2) / 2),
			kept: ['drawing', 'hard'],
			superseded: []
		});
	});

	it('never supersede a safety stop, whoever says so', () => {
		const demands = [
			demand('drawing', range(0.1, 0.3), { authority: 'customer' }),
			demand('stop', atMost(0.05), { severity: 'safety-stop' })
		];
		expect(settled('gun-distance', demands)).toEqual({ clash: ['drawing', 'stop'] });
	});

	it('that do not meet are named, and only those', () => {
		const demands = [
			demand('low', range(0.1, 0.2)),
			demand('all', range(0, 1)),
			demand('high', range(0.3, 0.4)),
			demand('weaker', range(0.5, 0.6), { authority: 'tool' })
		];
		expect(settled('gun-distance', demands)).toEqual({ clash: ['low', 'high'] });
	});

	it('may meet in one value, unless that limit is open', () => {
		expect(settled('gun-distance', [demand('a', atMost(0.2)), demand('b', atLeast(0.2))])).toMatchObject({
			answer: quantity(0.2)
		});
		expect(settled('gun-distance', [demand('a', below(0.2)), demand('b', atLeast(0.2))])).toEqual({
			clash: ['a', 'b']
		});
	});

	it('with one end are answered at that end, clear of it where it is open', () => {
		expect(settled('gun-distance', [demand('a', atMost(0.2))])).toMatchObject({ answer: quantity(0.2) });
		expect(settled('gun-distance', [demand('a', atLeast(0.2))])).toMatchObject({ answer: quantity(0.2) });
		expect(settled('gun-distance', [demand('a', below(0.2))])).toMatchObject({ answer: quantity(0.2 * 0.9) });
	});

	it('of a count are answered with a whole number inside', () => {
		expect(settled('coats', [demand('a', range(1, 2, 'count'))])).toMatchObject({ answer: quantity(2) });
		expect(settled('coats', [demand('a', atMost(1.5, 'count'))])).toMatchObject({ answer: quantity(1) });
		expect(settled('coats', [demand('a', range(2, 2, 'count'))])).toMatchObject({ answer: quantity(2) });
		expect(settled('coats', [demand('a', below(3, 'count'))])).toMatchObject({ answer: quantity(2) });
		expect(settled('coats', [demand('a', range(1.2, 1.8, 'count'))])).toEqual({ clash: ['a'] });
	});

	it('cannot be met by options: that is a fault in a rule', () => {
		expect(() => settle('coats', [demand('a', { kind: 'one-of', options: ['two'] })])).toThrow(
			/numbers only/
		);
	});
});

describe('options on one field', () => {
	const oneOf = (...options: string[]) => ({ kind: 'one-of', options }) as const;
	const noneOf = (...options: string[]) => ({ kind: 'none-of', options }) as const;

	it('are chosen from what all rules allow, as the first prefers', () => {
		const demands = [demand('a', oneOf('refuse', 'ask')), demand('b', oneOf('ask', 'refuse'))];
		expect(settled('decision', demands)).toMatchObject({ answer: choice('refuse') });
		expect(settled('decision', [...demands, demand('c', oneOf('ask'))])).toMatchObject({
			answer: choice('ask'),
			kept: ['a', 'b', 'c']
		});
	});

	it('of a weaker authority stay where they can be met as well', () => {
		const demands = [
			demand('drawing', oneOf('ask'), { authority: 'customer' }),
			demand('shop', oneOf('refuse', 'ask'))
		];
		expect(settled('decision', demands)).toEqual({
			answer: choice('ask'),
			kept: ['drawing', 'shop'],
			superseded: []
		});
	});

	it('of a weaker authority give way where they contradict', () => {
		const demands = [
			demand('shop', oneOf('accept')),
			demand('drawing', oneOf('ask'), { authority: 'customer' })
		];
		expect(settled('decision', demands)).toEqual({
			answer: choice('ask'),
			kept: ['drawing'],
			superseded: ['shop']
		});
	});

	it('of a safety stop do not give way to anybody', () => {
		const demands = [
			demand('stop', oneOf('refuse'), { severity: 'safety-stop' }),
			demand('drawing', oneOf('accept'), { authority: 'customer' })
		];
		expect(settled('decision', demands)).toEqual({ clash: ['stop', 'drawing'] });
	});

	it('that one rank contradicts on are named', () => {
		const demands = [
			demand('first', oneOf('accept', 'ask')),
			demand('accepting', oneOf('accept')),
			demand('asking', oneOf('ask'))
		];
		expect(settled('decision', demands)).toEqual({ clash: ['accepting', 'asking'] });
	});

	it('that are barred are not chosen', () => {
		const demands = [demand('a', oneOf('accept', 'ask')), demand('b', noneOf('accept'))];
		expect(settled('decision', demands)).toMatchObject({ answer: choice('ask') });
		expect(settled('decision', [demand('b', noneOf('accept', 'ask'))])).toMatchObject({
			answer: choice('refuse')
		});
	});

	it('of several choices are all taken, in the order of the sheet', () => {
		const demands = [
			demand('a', { kind: 'all-of', options: ['datum'] }),
			demand('b', { kind: 'all-of', options: ['thread', 'datum'], not: ['ground-contact'] })
		];
		expect(settled('mask-features', demands)).toMatchObject({ answer: choices('thread', 'datum') });
		expect(settled('mask-features', [demand('none', noneOf('thread'))])).toMatchObject({ answer: choices() });
		expect(settled('mask-features', [...demands, demand('none', noneOf('thread'))])).toEqual({
			clash: ['b', 'none']
		});
		expect(
			settled('mask-features', [...demands, demand('c', { kind: 'all-of', options: ['ground-contact'] })])
		).toEqual({ clash: ['b', 'c'] });
	});

	it('of an order keep every pair, and a circle is named', () => {
		const pair = (rule: string, first: string, then: string) =>
			demand(rule, { kind: 'order', before: [[first, then]] });
		const planned = settled('preparation-order', [pair('a', 'coat', 'mask'), pair('b', 'mask', 'degrease')]);
		expect(planned).toMatchObject({
			answer: order('water-break', 'blast', 'blow-off', 'coat', 'mask', 'degrease')
		});
		expect(
			settled('preparation-order', [
				pair('a', 'coat', 'mask'),
				pair('b', 'mask', 'coat'),
				pair('c', 'mask', 'blast')
			])
		).toEqual({ clash: ['a', 'b'] });
	});
});
