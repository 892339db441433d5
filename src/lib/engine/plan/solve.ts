import type { Job } from '../job/job';
import { RULES } from '../rules';
import questionNamed from '../rules/intake/question-named';
import { namedTopics, raisedTopics } from '../rules/intake/questions';
import windowsMeet from '../rules/intake/windows-meet';
import type { Rule } from '../rules/rule';
import { field, FIELD_IDS, type FieldId } from '../setup/fields';
import type { Shop } from '../shop/shop';
import { ENGINE_VERSION } from '../version';
import type { Conflict, Demand, Plan, PlannedField } from './plan';
import { settle } from './settle';
import { situation, type Situation } from './situation';

type DemandsByField = ReadonlyMap<FieldId, readonly Demand[]>;
type Settled = { readonly fields: readonly PlannedField[]; readonly conflicts: readonly Conflict[] };

const demand = (rule: Rule, seen: Situation): Demand => ({
	rule: rule.id,
	competency: rule.competency,
	severity: rule.severity,
	authority: rule.authority,
	expectation: rule.expects(seen)
});

function demandsByField(rules: readonly Rule[], seen: Situation): DemandsByField {
	const byField = new Map<FieldId, Demand[]>();
	for (const rule of rules)
		if (rule.applies(seen)) byField.set(rule.field, [...(byField.get(rule.field) ?? []), demand(rule, seen)]);
	return byField;
}

function settleAll(byField: DemandsByField): Settled {
	const fields: PlannedField[] = [];
	const conflicts: Conflict[] = [];
	for (const id of FIELD_IDS) {
		const demands = byField.get(id);
		if (!demands) continue;
		const settled = settle(id, demands);
		if ('answer' in settled) fields.push(settled);
		else conflicts.push(settled);
	}
	return { fields, conflicts };
}

const decisionOf = (fields: readonly PlannedField[]): Plan['decision'] => {
	const decision = fields.find(({ field }) => field === 'decision')?.answer;
	if (decision?.kind !== 'choice') throw new Error('solve: no rule says whether the job may start');
	return decision.option as Plan['decision'];
};

/** Rules that stand against starting: all that speak of the decision, unless they let the job start. */
const reasonsOf = (fields: readonly PlannedField[], decision: Plan['decision']) =>
	decision === 'accept'
		? []
		: (fields.find(({ field }) => field === 'decision')?.demands ?? []).map(({ rule }) => rule);

/** Demands on the decision that leave asking open: the questions there are already. */
const leavesAskingOpen = ({ expectation }: Demand) =>
	expectation.kind === 'one-of' && expectation.options.includes('ask');

/** When limits do not meet the decision is to ask, and what to ask includes that they do not. */
function askAboutConflict(intake: DemandsByField, seen: Situation): DemandsByField {
	const questions = (intake.get('decision') ?? []).filter(leavesAskingOpen);
	const named: Demand = {
		...demand(questionNamed, seen),
		expectation: namedTopics([...raisedTopics(seen), 'conflict'])
	};
	return new Map([
		...intake,
		['decision', [demand(windowsMeet, seen), ...questions]],
		['ask-about', [named]]
	]);
}

/** Intake comes first, and how a person stays unhurt does not depend on what intake decides. */
const FIRST = RULES.filter(
	({ station, field: id }) => station === 'intake' || field(id).competency === 'safety'
);
const DECISIVE = RULES.filter(({ field: id }) => id === 'decision');

/**
 * Whether intake lets a job start. Quicker than the whole plan, which may still find limits that do not meet. False
 * where the shop has no data sheet for the coating.
 */
export function mayStart(job: Job, shop: Shop): boolean {
	const seen = situation(job, shop);
	if (!seen) return false;
	const { fields } = settleAll(demandsByField(DECISIVE, seen));
	return fields.length > 0 && decisionOf(fields) === 'accept';
}

/**
 * The plan for a job in this shop. A job that may not start is planned up to the question, with the safety fields:
 * the work of later stations is not worked out on guesses. Limits that cannot both be met make the plan ask, naming
 * them.
 * Throws where the shop has no data sheet for the coating: nothing can be said then.
 */
export function solve(job: Job, shop: Shop): Plan {
	const seen = situation(job, shop);
	if (!seen) throw new RangeError(`solve: no data sheet ${job.coating} in force on ${shop.on}`);
	const intake = demandsByField(FIRST, seen);
	const start = settleAll(intake);
	const accepted = start.conflicts.length === 0 && decisionOf(start.fields) === 'accept';
	const all = accepted ? settleAll(demandsByField(RULES, seen)) : start;
	const { fields } = all.conflicts.length ? settleAll(askAboutConflict(intake, seen)) : all;
	const decision = decisionOf(fields);
	return {
		engine: ENGINE_VERSION,
		decision,
		reasons: reasonsOf(fields, decision),
		conflicts: all.conflicts,
		fields
	};
}
