import {
	breached,
	field,
	grade,
	limits,
	rightAnswers,
	type Answer,
	type Demand,
	type FieldId,
	type Plan
} from '../../src/lib/engine/index';

/** Whether a field can be filled in with this at all. */
function fillsIn(id: FieldId, answer: Answer): boolean {
	const spec = field(id);
	if (spec.kind !== answer.kind) return false;
	if (answer.kind === 'quantity') return Number.isFinite(answer.value);
	const options = Object.keys((spec as Extract<typeof spec, { options: object }>).options);
	const given = answer.kind === 'choice' ? [answer.option] : answer.options;
	const known = given.every((option) => options.includes(option)) && new Set(given).size === given.length;
	return known && (spec.kind !== 'order' || given.length === options.length);
}

/** Whether something could meet this demand if it stood alone. */
function canBeMet(id: FieldId, { expectation }: Demand): boolean {
	const window = limits(expectation);
	if (window) {
		const { min, max, open, amber } = window;
		return (open ? min < max : min <= max) && amber >= 0 && Number.isFinite(amber);
	}
	const spec = field(id);
	const options = spec.kind === 'quantity' ? [] : Object.keys(spec.options);
	switch (expectation.kind) {
		case 'one-of':
			return expectation.options.some((option) => options.includes(option));
		case 'none-of':
			return spec.kind === 'choices' || options.some((option) => !expectation.options.includes(option));
		case 'all-of':
			return expectation.options.every(
				(option) => options.includes(option) && !expectation.not?.includes(option)
			);
		default:
			return true;
	}
}

function conflictProblems({ conflicts, decision, reasons, fields }: Plan): string[] {
	if (!conflicts.length) return [];
	const asked = fields.find((one) => one.field === 'ask-about')?.answer;
	const named = asked?.kind === 'choices' && asked.options.includes('conflict');
	const filled = conflicts.filter(
		(conflict) =>
			!['decision', 'ask-about'].includes(conflict.field) &&
			fields.some((planned) => planned.field === conflict.field)
	);
	return [
		...(decision === 'ask' ? [] : [`a conflict leads to ${decision}`]),
		...(named && reasons.includes('windows-meet') ? [] : ['a conflict is not named among the questions']),
		...conflicts.filter(({ rules }) => rules.length < 2).map((one) => `${one.field}: names one rule only`),
		...filled.map((one) => `${one.field}: in conflict and demanded all the same`)
	];
}

/** What the plan says against itself; empty where all of it can be done. */
export function contradictions(plan: Plan): string[] {
	const { fields, decision, reasons } = plan;
	const own = rightAnswers(plan);
	const broken = breached(plan, own);
	const once = new Set(fields.map(({ field: id }) => id)).size === fields.length;
	const beyond = fields.filter(({ field: id }) => {
		const { competency } = field(id);
		return competency !== 'intake' && competency !== 'safety';
	});
	return [
		...broken.map(({ demand }) => `own answer breaks ${demand.rule}`),
		...(broken.length === 0 && grade(plan, own).result !== 'clear' ? ['graded otherwise than judged'] : []),
		...(once ? [] : ['a field is asked twice']),
		...fields.filter((one) => !fillsIn(one.field, one.answer)).map((one) => `${one.field}: no such answer`),
		...fields.flatMap((one) =>
			one.demands
				.filter((demand) => !canBeMet(one.field, demand))
				.map(({ rule }) => `${one.field}: nothing meets ${rule}`)
		),
		...((decision === 'accept') === (reasons.length === 0)
			? []
			: [`${decision} for ${reasons.length} reasons`]),
		...(decision !== 'accept' && beyond.length ? [`${decision}, and still planned at the bench`] : []),
		...conflictProblems(plan)
	];
}
