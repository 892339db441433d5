import type { Answers } from '../grading/answer';
import { rightAnswers } from '../grading/grade';
import type { Plan } from '../plan/plan';
import type { Situation } from '../plan/situation';
import type { Traced } from '../plan/trace';
import { field, type FieldId } from '../setup/fields';
import type { Dimension } from '../units/dimension';

/** A job as it was set up: the plan, and an answer for every field that somebody filled in. */
export type PutIn = {
	readonly plan: Plan;
	readonly seen: Situation;
	readonly answers: Answers;
	/** Fields that were asked and left empty. */
	readonly unset: readonly FieldId[];
};

/** Fields that were not asked are taken as the plan answers them: a drill shows those stations filled in. */
export function putIn(plan: Plan, seen: Situation, given: Answers, asked?: readonly FieldId[]): PutIn {
	const wasAsked = (id: FieldId) => !asked || asked.includes(id);
	const own = rightAnswers(plan);
	const ids = plan.fields.map(({ field: id }) => id);
	const answers = Object.fromEntries(
		ids.map((id) => [id, wasAsked(id) ? given[id] : own[id]] as const).filter(([, answer]) => answer)
	) as Answers;
	return { plan, seen, answers, unset: ids.filter((id) => !answers[id]) };
}

/** Whether the job asks for the field at all. */
const speaksOf = ({ plan }: PutIn, id: FieldId) => plan.fields.some((one) => one.field === id);

/** Whether nothing that the job asks of these was left empty, and it asks for at least one. */
export const allSet = (given: PutIn, ids: readonly FieldId[]) =>
	ids.some((id) => speaksOf(given, id)) && !ids.some((id) => given.unset.includes(id));

/** A number that was set, traced to its field; undefined where there is none or it is no number. */
export function amount<D extends Dimension>(
	{ answers }: PutIn,
	id: FieldId,
	dimension: D
): Traced<D> | undefined {
	const [spec, answer] = [field(id), answers[id]];
	if (spec.kind !== 'quantity' || spec.dimension !== dimension)
		throw new TypeError(`put-in: ${id} is no ${dimension}`);
	if (answer?.kind !== 'quantity' || !Number.isFinite(answer.value)) return undefined;
	return {
		value: answer.value as Traced<D>['value'],
		dimension,
		label: spec.label,
		origin: { kind: 'answer', field: id },
		provenance: { origin: 'answer', verification: { read: 'set-up sheet' } },
		inputs: {}
	};
}

/** The window a rule put on this job, in this dimension; undefined where it put none. */
export function windowBy<D extends Dimension>({ plan }: PutIn, rule: string, dimension: D) {
	const demands = plan.fields.flatMap(({ demands }) => demands);
	const expectation = demands.find((demand) => demand.rule === rule)?.expectation;
	if (expectation?.kind !== 'range' || expectation.min.dimension !== dimension) return undefined;
	return { min: expectation.min as Traced<D>, max: expectation.max as Traced<D> };
}
