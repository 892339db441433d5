import {
	field,
	grade,
	limits,
	si,
	type Answer,
	type Dimension,
	type Plan,
	type PlannedField
} from '$lib/engine';
import type { Random } from './random';

/** Right figure, wrong unit: what the number is multiplied with when one is taken for the other. */
const UNIT_SLIPS: Partial<Record<Dimension, readonly number[]>> = {
	pressure: [14.5038, 1 / 14.5038],
	length: [25.4, 1 / 25.4],
	volume: [29.5735, 1 / 29.5735],
	mass: [28.3495, 1 / 28.3495],
	duration: [60, 1 / 60],
	fraction: [10, 0.1]
};

const ICE = 273.15;
/** A figure in °F written down as °C, and the other way round. */
const scaleSlips = (kelvin: number) => [ICE + (kelvin - ICE) * 1.8 + 32, ICE + (kelvin - ICE - 32) / 1.8];

/** How far past a limit a plain slip lies, in tenths of the limit. */
const PAST = [3, 6] as const;

function numbers({ field: id, demands, answer }: PlannedField, random: Random): number[] {
	const spec = field(id);
	if (spec.kind !== 'quantity' || answer.kind !== 'quantity') return [];
	const { value } = answer;
	const unit =
		spec.dimension === 'temperature'
			? scaleSlips(value)
			: (UNIT_SLIPS[spec.dimension] ?? []).map((factor) => value * factor);
	const share = random.integer(...PAST) / 10;
	const past = demands.flatMap(({ expectation }) => {
		const window = limits(expectation);
		if (!window) return [];
		const off = (limit: number) =>
			window.amber + share * (spec.dimension === 'temperature' ? 60 : Math.abs(limit));
		return [window.max + off(window.max), window.min - off(window.min)];
	});
	return [...unit, ...past].filter((one) => Number.isFinite(one) && one > 0);
}

function options({ field: id, answer, offered }: PlannedField, random: Random): Answer[] {
	const spec = field(id);
	if (spec.kind === 'quantity' || answer.kind === 'quantity') return [];
	const ids = Object.keys(offered ?? spec.options);
	if (answer.kind === 'choice') return ids.map((option) => ({ kind: 'choice', option }));
	if (answer.kind === 'choices')
		return ids.map((one) => ({
			kind: 'choices',
			options: answer.options.includes(one)
				? answer.options.filter((other) => other !== one)
				: [...answer.options, one]
		}));
	return [{ kind: 'order', options: random.some(answer.options, answer.options.length) }];
}

/** Whole things are counted: a slip in a count is a whole number too. */
const asAnswer = (planned: PlannedField, value: number): Answer => {
	const spec = field(planned.field);
	const counted = spec.kind === 'quantity' && spec.dimension === 'count';
	return { kind: 'quantity', value: si(counted ? Math.round(value) : value), typed: '' };
};

/** A wrong answer of the sort people give: a unit mixed up, a limit passed, another option; undefined where none is wrong. */
export function slip(plan: Plan, planned: PlannedField, random: Random): Answer | undefined {
	const candidates = [
		...numbers(planned, random).map((value) => asAnswer(planned, value)),
		...options(planned, random)
	];
	const alone = { ...plan, fields: [planned] };
	const wrong = candidates.filter((answer) =>
		grade(alone, { [planned.field]: answer }).breaches.some(({ zone }) => zone === 'red')
	);
	return wrong.length ? random.pick(wrong) : undefined;
}
