import type { Job } from '../job/job';
import { RULES } from '../rules';
import questionNamed from '../rules/intake/question-named';
import { namedTopics, raisedTopics } from '../rules/intake/questions';
import windowsMeet from '../rules/intake/windows-meet';
import type { Rule } from '../rules/rule';
import type { Field } from '../setup/field';
import { field, FIELD_IDS, type FieldId } from '../setup/fields';
import type { Shop } from '../shop/shop';
import { ENGINE_VERSION } from '../version';
import type { Conflict, Demand, Plan, PlannedField } from './plan';
import { plannedField } from './planned-field';
import { settle } from './settle';
import { situation, type Situation } from './situation';

type Settled = { readonly fields: readonly PlannedField[]; readonly conflicts: readonly Conflict[] };

/** A field of the sheet with the rules that speak of it, in working order. */
type Spoken = { readonly id: FieldId; readonly rules: readonly Rule[] };

const spokenOf = (wanted: (field: Field, id: FieldId) => boolean): readonly Spoken[] =>
	FIELD_IDS.filter((id) => wanted(field(id), id))
		.map((id) => ({ id, rules: RULES.filter((rule) => rule.field === id) }))
		.filter(({ rules }) => rules.length > 0);

const DECISION = spokenOf((_, id) => id === 'decision');
const INTAKE = spokenOf(({ competency }) => competency === 'intake');
const WORK = spokenOf(({ competency }) => competency !== 'intake' && competency !== 'safety');
const SAFETY = spokenOf(({ competency }) => competency === 'safety');

const demand = (rule: Rule, seen: Situation): Demand => ({
	rule: rule.id,
	competency: rule.competency,
	severity: rule.severity,
	authority: rule.authority,
	expectation: rule.expects(seen)
});

const demandsOf = (rules: readonly Rule[], seen: Situation): readonly Demand[] =>
	rules.filter((rule) => rule.applies(seen)).map((rule) => demand(rule, seen));

function settleAll(spoken: readonly Spoken[], seen: Situation): Settled {
	const fields: PlannedField[] = [];
	const conflicts: Conflict[] = [];
	for (const { id, rules } of spoken) {
		const demands = demandsOf(rules, seen);
		if (!demands.length) continue;
		const settled = settle(id, demands);
		if ('answer' in settled) fields.push(settled);
		else conflicts.push(settled);
	}
	return { fields, conflicts };
}

const decisionOf = (fields: readonly PlannedField[]): Plan['decision'] => {
	const decision = plannedField({ fields }, 'decision')?.answer;
	if (decision?.kind !== 'choice') throw new Error('solve: no rule says whether the job may start');
	return decision.option as Plan['decision'];
};

/** Rules that stand against starting: all that speak of the decision, unless they let the job start. */
const reasonsOf = (fields: readonly PlannedField[], decision: Plan['decision']) =>
	decision === 'accept' ? [] : (plannedField({ fields }, 'decision')?.demands ?? []).map(({ rule }) => rule);

/** Demands on the decision that leave asking open: the questions there are already. */
const leavesAskingOpen = ({ expectation }: Demand) =>
	expectation.kind === 'one-of' && expectation.options.includes('ask');

/** When limits do not meet the decision is to ask, and what to ask includes that they do not. */
function askAboutConflict(fields: readonly PlannedField[], seen: Situation): readonly PlannedField[] {
	const questions = DECISION.flatMap(({ rules }) => demandsOf(rules, seen)).filter(leavesAskingOpen);
	const named: Demand = {
		...demand(questionNamed, seen),
		expectation: namedTopics([...raisedTopics(seen), 'conflict'])
	};
	const asked = [
		settle('decision', [demand(windowsMeet, seen), ...questions]),
		settle('ask-about', [named])
	].filter((settled) => 'answer' in settled);
	return [...asked, ...fields.filter(({ field }) => field !== 'decision' && field !== 'ask-about')];
}

/**
 * Whether intake lets a job start. Quicker than the whole plan, which may still find limits that do not meet. False
 * where the shop has no data sheet for the coating.
 */
export function mayStart(job: Job, shop: Shop): boolean {
	const seen = situation(job, shop);
	if (!seen) return false;
	const { fields } = settleAll(DECISION, seen);
	return fields.length > 0 && decisionOf(fields) === 'accept';
}

/**
 * The plan for a job in this shop. A job that may not start is planned up to the question, with the safety fields, as
 * how a person stays unhurt does not depend on what intake decides: the work of later stations is not worked out on
 * guesses. Limits that cannot both be met make the plan ask, naming them.
 * Throws where the shop has no data sheet for the coating: nothing can be said then.
 */
export function solve(job: Job, shop: Shop): Plan {
	const seen = situation(job, shop);
	if (!seen) throw new RangeError(`solve: no data sheet ${job.coating} in force on ${shop.on}`);
	const [intake, safety] = [settleAll(INTAKE, seen), settleAll(SAFETY, seen)];
	const unclear = intake.conflicts.length + safety.conflicts.length > 0;
	const accepted = !unclear && decisionOf(intake.fields) === 'accept';
	const work = accepted ? settleAll(WORK, seen) : { fields: [], conflicts: [] };
	const conflicts = [...intake.conflicts, ...work.conflicts, ...safety.conflicts];
	const fields = conflicts.length
		? askAboutConflict([...intake.fields, ...safety.fields], seen)
		: [...intake.fields, ...work.fields, ...safety.fields];
	const decision = decisionOf(fields);
	return { engine: ENGINE_VERSION, decision, reasons: reasonsOf(fields, decision), conflicts, fields };
}
