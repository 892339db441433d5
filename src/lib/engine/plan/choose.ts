import type { Answer } from '../grading/answer';
import { field, type FieldId } from '../setup/fields';
import type { Dimension, Si } from '../units/dimension';
import type { Demand } from './plan';
import { windowOf, type Window } from './window-of';

/** Share of an open limit that stays clear of it. */
const CLEAR_OF_LIMIT = 0.9;

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
	const window = windowOf(demands);
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

/** The option all demands allow that the first of them likes best. */
function oneOption(options: readonly string[], demands: readonly Demand[]): Answer | undefined {
	const allows = ({ expectation }: Demand, option: string) =>
		expectation.kind === 'one-of'
			? expectation.options.includes(option)
			: expectation.kind !== 'none-of' || !expectation.options.includes(option);
	const preferred = demands.map(({ expectation }) => expectation).find((one) => one.kind === 'one-of');
	const option = (preferred?.options ?? options).find((one) =>
		demands.every((demand) => allows(demand, one))
	);
	return option === undefined ? undefined : { kind: 'choice', option };
}

/** Every option that some demand needs, unless another bars it. */
function neededOptions(options: readonly string[], demands: readonly Demand[]): Answer | undefined {
	const [needed, barred]: [string[], string[]] = [[], []];
	for (const { expectation } of demands)
		if (expectation.kind === 'all-of') {
			needed.push(...expectation.options);
			barred.push(...(expectation.not ?? []));
		} else if (expectation.kind === 'none-of') barred.push(...expectation.options);
	if (needed.some((one) => barred.includes(one))) return undefined;
	return { kind: 'choices', options: options.filter((one) => needed.includes(one)) };
}

/** An answer to the field that meets all of these demands; undefined where there is none. */
export function choose(id: FieldId, demands: readonly Demand[]): Answer | undefined {
	const spec = field(id);
	switch (spec.kind) {
		case 'quantity':
			return number(spec.dimension, demands);
		case 'choice':
			return oneOption(Object.keys(spec.options), demands);
		case 'choices':
			return neededOptions(Object.keys(spec.options), demands);
		case 'order':
			return inOrder(
				Object.keys(spec.options),
				demands.flatMap(({ expectation }) => (expectation.kind === 'order' ? expectation.before : []))
			);
	}
}
