import type { Answer } from '../grading/answer';
import { limits, type Expectation } from '../rules/expectation';
import { field, type FieldId } from '../setup/fields';
import type { Dimension, Si } from '../units/dimension';
import type { Demand } from './plan';

type Of<K extends Expectation['kind']> = Extract<Expectation, { kind: K }>;
const only = <K extends Expectation['kind']>(demands: readonly Demand[], kind: K) =>
	demands.map(({ expectation }) => expectation).filter((one): one is Of<K> => one.kind === kind);

/** Share of an open limit that stays clear of it. */
const CLEAR_OF_LIMIT = 0.9;

type Window = { readonly min: number; readonly max: number; readonly open: boolean };

const inside = ({ min, max, open }: Window, value: number) =>
	value >= min && (open ? value < max : value <= max);

function middle({ min, max, open }: Window): number {
	if (min > -Infinity && max < Infinity) return (min + max) / 2;
	if (min > -Infinity) return min;
	return open ? max * CLEAR_OF_LIMIT : max;
}

/** The whole number in the window nearest its middle; undefined where there is none. */
const whole = (window: Window) =>
	[Math.round, Math.floor, Math.ceil].map((to) => to(middle(window))).find((one) => inside(window, one));

function number(dimension: Dimension, demands: readonly Demand[]): Answer | undefined {
	const all = demands.map(({ expectation }) => limits(expectation)).filter((one) => one !== undefined);
	if (all.length < demands.length) throw new Error('settle: a quantity is met by numbers only');
	const max = Math.min(...all.map((one) => one.max));
	const window = {
		min: Math.max(...all.map((one) => one.min)),
		max,
		open: all.some((one) => one.open && one.max === max)
	};
	const value = dimension === 'count' ? whole(window) : middle(window);
	return value !== undefined && inside(window, value)
		? { kind: 'quantity', value: value as Si, typed: '' }
		: undefined;
}

/** Repeatedly takes the first option that nothing left has to come before. */
function inOrder(options: string[], before: readonly (readonly [string, string])[]): Answer | undefined {
	const left = [...options];
	const done: string[] = [];
	while (left.length) {
		const next = left.findIndex(
			(one) => !before.some(([first, then]) => then === one && left.includes(first))
		);
		if (next < 0) return undefined;
		done.push(...left.splice(next, 1));
	}
	return { kind: 'order', options: done };
}

/** An answer to the field that meets all of these demands; undefined where there is none. */
export function choose(id: FieldId, demands: readonly Demand[]): Answer | undefined {
	const spec = field(id);
	if (spec.kind === 'quantity') return number(spec.dimension, demands);
	const options = Object.keys(spec.options);
	if (spec.kind === 'order')
		return inOrder(
			options,
			only(demands, 'order').flatMap(({ before }) => before)
		);
	const barred = only(demands, 'none-of').flatMap((one) => one.options);
	if (spec.kind === 'choice') {
		const sets = only(demands, 'one-of').map((one) => one.options);
		// the first rule's order of preference decides among what all rules allow
		const option = (sets[0] ?? options).find(
			(one) => !barred.includes(one) && sets.every((set) => set.includes(one))
		);
		return option === undefined ? undefined : { kind: 'choice', option };
	}
	const wanted = only(demands, 'all-of');
	const needed = new Set(wanted.flatMap((one) => one.options));
	if ([...barred, ...wanted.flatMap(({ not = [] }) => not)].some((one) => needed.has(one))) return undefined;
	return { kind: 'choices', options: options.filter((one) => needed.has(one)) };
}
