import { field, limits, type Answer, type FieldId } from '../../src/lib/engine/index';
import type { BenchJob } from './bench-jobs';

/*
 * What a person would write who wanted only to know how many demands fail, and had the plan beforehand: every number
 * and option taken out of its object and laid in rows, every comparison written out in one loop. It covers all demands
 * of the plan: windows with the same room for the last digit, choices and ticks as bits, orders as places. It names
 * nothing and keeps nothing; only ever the fastest that the same arithmetic can be.
 */

export type Rows = {
	/** Lowest, highest, given, and 1 for an open limit. */
	readonly windows: Float64Array;
	/** Wanted all, wanted any of (0: no such wish), barred, given. */
	readonly options: Int32Array;
	/** Place of what comes first, place of what comes after, by demand; a demand starts with its number of pairs. */
	readonly orders: Int32Array;
};

const bits = (id: FieldId, options: readonly string[]): number => {
	const spec = field(id);
	const all = spec.kind === 'quantity' ? [] : Object.keys(spec.options);
	return options.reduce((sum, option) => sum | (1 << all.indexOf(option)), 0);
};

const given = (answer: Answer) =>
	answer.kind === 'choice' ? [answer.option] : answer.kind === 'quantity' ? [] : answer.options;

/** Takes everything that is compared out of a plan and its answers. */
export function rowsOf({ plan, answers }: BenchJob): Rows {
	const [windows, options, orders]: [number[], number[], number[]] = [[], [], []];
	for (const { field: id, demands } of plan.fields)
		for (const { expectation } of demands) {
			const answer = answers[id]!;
			const window = limits(expectation);
			if (window && answer.kind === 'quantity')
				windows.push(window.min, window.max, answer.value, window.open ? 1 : 0);
			else if (expectation.kind === 'order') {
				const at = (step: string) => given(answer).indexOf(step);
				orders.push(expectation.before.length, ...expectation.before.flatMap(([a, b]) => [at(a), at(b)]));
			} else if (expectation.kind === 'one-of')
				options.push(0, bits(id, expectation.options), 0, bits(id, given(answer)));
			else if (expectation.kind === 'none-of')
				options.push(0, 0, bits(id, expectation.options), bits(id, given(answer)));
			else if (expectation.kind === 'all-of')
				options.push(
					bits(id, expectation.options),
					0,
					bits(id, expectation.not ?? []),
					bits(id, given(answer))
				);
		}
	return {
		windows: Float64Array.from(windows),
		options: Int32Array.from(options),
		orders: Int32Array.from(orders)
	};
}

/** How many demands fail. */
export function failingByHand({ windows, options, orders }: Rows): number {
	let failing = 0;
	for (let i = 0; i < windows.length; i += 4) {
		const value = windows[i + 2]!;
		const size = value < 0 ? -value : value;
		const room = 1e-9 * (size > 1e-6 ? size : 1e-6);
		const high = value - windows[i + 1]!;
		if (windows[i]! - value > room || (windows[i + 3] ? high >= -room : high > room)) failing += 1;
	}
	for (let i = 0; i < options.length; i += 4) {
		const [all, any, answer] = [options[i]!, options[i + 1]!, options[i + 3]!];
		if ((answer & all) !== all || (any !== 0 && !(answer & any)) || (answer & options[i + 2]!) !== 0)
			failing += 1;
	}
	for (let i = 0; i < orders.length;) {
		const end = i + 1 + 2 * orders[i]!;
		let kept = true;
		for (i += 1; i < end; i += 2) if (orders[i]! < 0 || orders[i]! >= orders[i + 1]!) kept = false;
		if (!kept) failing += 1;
	}
	return failing;
}
