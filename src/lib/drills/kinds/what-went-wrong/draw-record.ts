import {
	field,
	limits,
	ruleById,
	si,
	type Answer,
	type Answers,
	type Cause,
	type Demand,
	type Direction,
	type Plan,
	type PlannedField
} from '$lib/engine';
import type { Random } from '../../random';

/** Of six lines of a set-up sheet, as a rule: one says that a rule was broken, two that it was kept, three are empty. */
const DICE = 6;
const BROKEN = 1;
const KEPT = 3;

/** How far past a limit a written number lies where the rule has no amber, as a share of the limit. */
const PAST = 0.2;

function numberPast({ expectation }: Demand, way: Direction, counted: boolean): Answer | undefined {
	const window = limits(expectation);
	const limit = window && (way === 'low' ? window.min : window.max);
	if (!window || limit === undefined || !Number.isFinite(limit)) return undefined;
	const past = window.amber > 0 ? 2 * window.amber : PAST * Math.abs(limit);
	const value = way === 'low' ? limit - past : limit + past;
	const whole =
		way === 'low' ? Math.min(Math.floor(value), limit - 1) : Math.max(Math.ceil(value), limit + 1);
	const written = counted ? whole : value;
	return written > 0 ? { kind: 'quantity', value: si(written), typed: '' } : undefined;
}

/** What stands on the sheet where this rule was broken this way; undefined where nothing sensible can. */
function broken(planned: PlannedField, { rule, direction }: Cause, random: Random): Answer | undefined {
	const demand = planned.demands.find((one) => one.rule === rule);
	const spec = field(planned.field);
	if (!demand) return undefined;
	if (spec.kind === 'quantity') return numberPast(demand, direction, spec.dimension === 'count');
	const { expectation } = demand;
	if (spec.kind !== 'choice' || expectation.kind !== 'one-of') return undefined;
	const others = Object.keys(spec.options).filter((option) => !expectation.options.includes(option));
	return others.length ? { kind: 'choice', option: random.pick(others) } : undefined;
}

/** A partly written record of the lines these causes speak of. Long lists and orders are left empty. */
export function drawRecord(plan: Plan, causes: readonly Cause[], random: Random): Answers {
	const open = causes.filter(({ fit }) => fit === 'unchecked');
	const lines = new Map(open.toReversed().map((cause) => [ruleById(cause.rule).field, cause]));
	const written: Partial<Record<PlannedField['field'], Answer>> = {};
	for (const planned of plan.fields) {
		const cause = lines.get(planned.field);
		const { kind } = field(planned.field);
		if (!cause || (kind !== 'quantity' && kind !== 'choice')) continue;
		const dice = random.integer(1, DICE);
		if (dice > KEPT) continue;
		const answer = dice > BROKEN ? planned.answer : broken(planned, cause, random);
		if (answer) written[planned.field] = answer;
	}
	return written;
}
