import { expect, test } from 'vitest';
import commonPractice, { type Said } from './common-practice';

const isWindow = (said: Said): said is readonly [number, number] => typeof said[0] === 'number';
/** Room for the last binary digit of a converted unit. */
const SAME = 1e-9;
const inside = (one: readonly [number, number], other: readonly [number, number]) =>
	one[0] >= other[0] * (1 - SAME) && one[1] <= other[1] * (1 + SAME);
const among = (some: readonly string[], all: readonly string[]) => some.every((one) => all.includes(one));

/** Two windows agree when one lies inside the other, two sets of options when one holds the other. */
function agree(trade: Said, ours: Said): boolean {
	if (ours.length === 0) return false;
	if (isWindow(trade) && isWindow(ours)) return inside(trade, ours) || inside(ours, trade);
	if (isWindow(trade) || isWindow(ours)) throw new TypeError('a window is no set of options');
	return among(trade, ours) || among(ours, trade);
}

test.each(commonPractice)(
	'$says',
	({ trade, ours, differs }: (typeof commonPractice)[number] & { differs?: string }) => {
		const agrees = agree(trade, ours());
		// an explanation of a difference that is not there any more is as wrong as none
		if (differs === undefined) expect(agrees, `the default is ${ours()}, the trade says ${trade}`).toBe(true);
		else expect(agrees, `explained as different, but the default is ${ours()}`).toBe(false);
	}
);

test('agreement can be missed', () => {
	expect(agree([1, 2], [3, 4])).toBe(false);
	expect(agree([1, 3], [2, 4])).toBe(false);
	expect(agree(['a'], ['b'])).toBe(false);
	expect(agree([1, 4], [2, 3])).toBe(true);
});
