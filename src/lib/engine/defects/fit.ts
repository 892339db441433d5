import type { Answer } from '../grading/answer';
import { measure } from '../grading/measure';
import type { Plan } from '../plan/plan';
import { solve } from '../plan/solve';
import type { Expectation } from '../rules/expectation';
import type { Rule } from '../rules/rule';
import { field, type FieldId } from '../setup/fields';
import type { Direction } from './causes';
import { IMPLIED_BY_A_COATED_PART, type Circumstances } from './circumstances';

/**
 * How well a cause fits what is known, best first. This order is the whole ranking: an established fact before a record,
 * a record before a rule that only could have been broken, and what speaks against a cause last. No likelihoods.
 */
export const FITS = [
	/** Its own test showed that the rule was broken this way. */
	'shown',
	/** The job's record, or the job itself, breaks the rule this way. */
	'recorded',
	/** The rule spoke of this job and nothing is written of how it was kept. */
	'unchecked',
	/** No job is known, or its plan ends before this station. */
	'unknown',
	/** The record says the rule was kept, or broken the other way. Records can be wrong. */
	'kept',
	/** The rule had nothing to say of this job. */
	'silent',
	/** Its own test showed that it was not this. */
	'excluded'
] as const;
export type Fit = (typeof FITS)[number];

/** The record a fit rests on: what was done beside what the rule expected. */
export type Recorded = { readonly answer: Answer; readonly expected: Expectation };
export type Judged = { readonly fit: Fit; readonly recorded: Recorded | null };

type Demanded = ReadonlyMap<string, { readonly field: FieldId; readonly expected: Expectation }>;

const demanded = ({ fields }: Plan): Demanded =>
	new Map(
		fields.flatMap(({ field, demands }) =>
			demands.map(({ rule, expectation }) => [rule, { field, expected: expectation }] as const)
		)
	);

/** Options have no low or high of their own: there, a direction the rule does not name counts as any it does name. */
export const isThisWay = (rule: Rule, off: Direction, direction: Direction) =>
	off === direction || (field(rule.field).kind !== 'quantity' && !rule.breaks[off]);

/** Makes the judge of one incident: it says of each cause how well it fits. Throws where `solve` does. */
export function judge({ ran, recorded, tests = {} }: Circumstances) {
	const plan = ran && solve(ran.job, ran.shop);
	const demands: Demanded = plan ? demanded(plan) : new Map();
	const answers = { ...IMPLIED_BY_A_COATED_PART, ...recorded };

	function byRecord(rule: Rule, direction: Direction): Judged {
		if (!plan) return { fit: 'unknown', recorded: null };
		const demand = demands.get(rule.id);
		const planned = plan.decision === 'accept' || rule.station === 'intake';
		if (!demand) return { fit: planned ? 'silent' : 'unknown', recorded: null };
		const answer = answers[demand.field];
		if (!answer) return { fit: 'unchecked', recorded: null };
		const { off } = measure(answer, demand.expected);
		const broken = off !== null && isThisWay(rule, off, direction);
		return { fit: broken ? 'recorded' : 'kept', recorded: { answer, expected: demand.expected } };
	}

	return (rule: Rule, direction: Direction): Judged => {
		const found = byRecord(rule, direction);
		const test = tests[rule.id];
		return test ? { ...found, fit: test === direction ? 'shown' : 'excluded' } : found;
	};
}
