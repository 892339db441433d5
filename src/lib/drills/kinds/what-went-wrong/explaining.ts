import {
	byRule,
	diagnose,
	ruleById,
	type Answers,
	type Cause,
	type DefectId,
	type FieldId
} from '$lib/engine';
import type { DrillTicket } from '../kind';

/** A job that was accepted lies on the table with its ticket: there is nothing left to find out about that. */
const SETTLED: readonly FieldId[] = ['decision', 'ask-about'];

/**
 * What can have led to this defect on this job, one cause a rule, in working order. Rules that say nothing of the job
 * cannot.
 */
export function explaining(
	defect: DefectId,
	{ job, shop }: DrillTicket,
	recorded: Answers
): readonly Cause[] {
	const causes = diagnose(defect, { ran: { job, shop }, recorded });
	const order = diagnose(defect).map(({ rule }) => rule);
	return byRule(causes)
		.filter(({ rule, fit }) => fit !== 'silent' && !SETTLED.includes(ruleById(rule).field))
		.toSorted((one, other) => order.indexOf(one.rule) - order.indexOf(other.rule));
}
