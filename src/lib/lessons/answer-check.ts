import { grade, ruleById, type RuleExample } from '$lib/engine';
import { findingView, movedOrder, readEntries, type Reader } from '$lib/paper';
import type { FieldCheck, LessonCheck, ReasonCheck } from './check';
import { REASON_FIELD, UNANSWERED, type CheckResult } from './check-view';

function answerReason(check: ReasonCheck, form: FormData): CheckResult | undefined {
	const values = form.getAll(REASON_FIELD);
	if (!values.length) return { ...UNANSWERED, outcome: 'empty' };
	const [option] = values;
	if (values.length > 1 || typeof option !== 'string' || !Object.hasOwn(check.options, option))
		return undefined;
	const entry = { answer: { kind: 'choice' as const, option } };
	return { outcome: option === check.right ? 'right' : 'wrong', entry, findings: [] };
}

function answerField(
	check: FieldCheck,
	example: RuleExample,
	form: FormData,
	reader: Reader
): CheckResult | undefined {
	const { field } = ruleById(check.rule);
	const pressed = form.get('move');
	if (typeof pressed === 'string') {
		const moved = movedOrder(pressed, form);
		if (moved?.field !== field) return undefined;
		return { ...UNANSWERED, entry: { answer: { kind: 'order', options: moved.options } } };
	}
	const entry = readEntries([field], form, reader)?.[field];
	if (!entry) return undefined;
	if (entry.problem) return { outcome: 'unread', entry, findings: [] };
	if (!entry.answer) return { outcome: 'empty', entry, findings: [] };
	const findings = grade(example.plan, { [field]: entry.answer }, [field]);
	const right = findings.result === 'clear';
	return {
		outcome: right ? 'right' : 'wrong',
		entry,
		findings: (right ? findings.all : findings.breaches).map((finding) => findingView(finding, reader))
	};
}

/**
 * Grades what was posted for a check. `unread` and `empty` are no tries, nor is a step moved without JavaScript
 * (outcome `open`). Undefined for a form that no page of ours can have sent.
 */
export function answerCheck(
	check: LessonCheck,
	example: RuleExample | undefined,
	form: FormData,
	reader: Reader
): CheckResult | undefined {
	if (check.kind === 'reason') return answerReason(check, form);
	return example && answerField(check, example, form, reader);
}
