import {
	GUN_CONTROL_IDS,
	GUN_CONTROLS,
	plannedField,
	TEACHING_GUN,
	unitFor,
	unitOf,
	windowOf,
	type GunControlId,
	type Plan
} from '$lib/engine';
import { filmMap as messages, say } from '$lib/i18n';
import type { Reader } from '../reader';

/** Steps that the scale of a control is divided into, at most. */
const DIVISIONS = 100;

/** Share of a step that a converted limit may be off by. */
const SLACK = 1e-6;

/** Steps a scale may have, times a power of ten: halves and quarters of an inch among them. */
const STEPS = [1, 2.5, 5, 10];

function stepOf(span: number, whole: boolean) {
	const least = span / DIVISIONS;
	const ten = 10 ** Math.floor(Math.log10(least));
	const step = ten * STEPS.find((one) => one * ten >= least * (1 - SLACK))!;
	return whole ? Math.max(1, step) : step;
}

/** The start of an empty control: a quarter or three quarters of its way, whichever is farther from being right. */
function startOf(id: GunControlId, plan: Plan): number {
	if (id === 'flow') return TEACHING_GUN.flow.value;
	const { least, most } = GUN_CONTROLS[id];
	const asked = plannedField(plan, id);
	const window = asked && windowOf(asked.demands);
	const outside = (value: number) => (window ? Math.max(window.min - value, value - window.max) : 0);
	const [low, high] = [least + (most - least) / 4, least + ((most - least) * 3) / 4];
	return outside(low) > outside(high) ? low : high;
}

/** Rid of the last binary digits, so that it prints as a person would write it. */
const plain = (value: number) => Number(value.toFixed(4));

/**
 * The controls of the gun bench, each on its own even scale in the reader's units. A value and its unit, written one
 * after the other, are read back by `readGun`.
 * @param set what each is set to so far, SI; the others start somewhere that is not right
 */
export const gunControlsView = (
	set: Readonly<Partial<Record<GunControlId, number>>>,
	plan: Plan,
	{ lang, units }: Reader
) =>
	GUN_CONTROL_IDS.map((id) => {
		const { dimension, least, most } = GUN_CONTROLS[id];
		const unit = unitOf(dimension, unitFor(least, dimension, units));
		const [from, to] = [unit.fromSi(least), unit.fromSi(most)];
		const step = stepOf(to - from, dimension === 'count');
		const [first, last] = [Math.ceil(from / step - SLACK), Math.floor(to / step + SLACK)];
		const steps = Math.round(unit.fromSi(set[id] ?? startOf(id, plan)) / step);
		return {
			id,
			label: messages[lang].control[id],
			unit: say(unit.label, lang),
			min: plain(first * step),
			max: plain(last * step),
			step: plain(step),
			value: plain(Math.min(Math.max(steps, first), last) * step)
		};
	});
