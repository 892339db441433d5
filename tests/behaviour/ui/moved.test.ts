import { expect, it } from 'vitest';
import { moved } from '$lib/ui';

const order = ['a', 'b', 'c'];

it.each([
	['c', 0, ['c', 'a', 'b']],
	['a', 1, ['b', 'a', 'c']],
	['a', 2, ['b', 'c', 'a']],
	['b', -5, ['b', 'a', 'c']],
	['b', 99, ['a', 'c', 'b']],
	['x', 0, ['a', 'b', 'c']]
])('%s to place %i', (id, to, expected) => {
	expect(moved(order, id, to)).toEqual(expected);
	expect(order).toEqual(['a', 'b', 'c']);
});
