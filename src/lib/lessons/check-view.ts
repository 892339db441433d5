import { ruleById, field, type RuleExample, type Shop } from '$lib/engine';
import { say } from '$lib/i18n';
import { fieldView, sheetView, ticketView, type Entry, type Reader } from '$lib/paper';
import type { FieldView, FindingView } from '$lib/ui';
import type { FieldCheck, LessonCheck, ReasonCheck } from './check';
import type { CheckOutcome, CheckView } from './lesson-view';

/** What was handed in for a check and what became of it. */
export type CheckResult = {
	readonly outcome: CheckOutcome;
	readonly entry: Entry;
	readonly findings: readonly FindingView[];
};

export const UNANSWERED: CheckResult = { outcome: 'open', entry: {}, findings: [] };

/** Name under which a check of reasons is posted. */
export const REASON_FIELD = 'reason';

const reasonField = (check: ReasonCheck, { entry }: CheckResult, { lang }: Reader): FieldView => ({
	kind: 'choice',
	id: `check-${check.id}-field`,
	name: REASON_FIELD,
	label: say(check.question, lang),
	options: Object.entries(check.options).map(([id, text]) => ({ id, label: say(text, lang) })),
	value: entry.answer?.kind === 'choice' ? entry.answer.option : ''
});

const setUpField = (check: FieldCheck, { entry }: CheckResult, reader: Reader): FieldView => ({
	...fieldView(ruleById(check.rule).field, entry, reader),
	id: `check-${check.id}-field`
});

function jobOf({ name, job, sheet }: RuleExample, shop: Shop, reader: Reader): NonNullable<CheckView['job']> {
	const { title, lang, rows } = sheetView(sheet, job.on, reader);
	return {
		name: say(name, reader.lang),
		ticket: ticketView(job, shop, reader),
		sheet: { title, lang, rows }
	};
}

/**
 * A check as it stands for a reader.
 * @param example the job it asks about; undefined for a check of reasons and where no sheet of the shop calls for it
 */
export function checkView(
	check: LessonCheck,
	example: RuleExample | undefined,
	result: CheckResult,
	settled: boolean,
	shop: Shop,
	reader: Reader
): CheckView {
	const { lang } = reader;
	const rule = ruleById(check.rule);
	const { outcome, findings } = result;
	const view = {
		id: check.id,
		rule: { title: say(rule.title, lang), href: `/${lang}/rules/${rule.id}` },
		outcome,
		findings,
		settled
	};
	if (check.kind === 'reason') {
		const verdict = outcome === 'right' || outcome === 'wrong';
		return {
			...view,
			question: say(check.question, lang),
			field: reasonField(check, result, reader),
			...(verdict ? { because: say(check.because, lang) } : {})
		};
	}
	return {
		...view,
		question: say(field(rule.field).label, lang),
		...(example ? { job: jobOf(example, shop, reader) } : {}),
		field: example ? setUpField(check, result, reader) : null
	};
}
