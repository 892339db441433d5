import { limits } from '../rules/expectation';
import type { Demand } from './plan';

/** Limits in SI of a number that meets several demands; an open upper limit is itself outside. */
export type Window = { readonly min: number; readonly max: number; readonly open: boolean };

/** What is left of all these windows; the lower limit is above the upper one where they do not meet. */
export function windowOf(demands: readonly Demand[]): Window {
	let [min, max, open] = [-Infinity, Infinity, false];
	for (const { expectation } of demands) {
		const one = limits(expectation);
		if (!one) throw new Error('windowOf: a quantity is met by numbers only');
		min = Math.max(min, one.min);
		// of limits that coincide the open one is the stricter
		open = (one.max <= max && one.open) || (max <= one.max && open);
		max = Math.min(max, one.max);
	}
	return { min, max, open };
}
