import { field, plannedField, ruleById, type FieldId } from '$lib/engine';
import { say } from '$lib/i18n';
import { answerText, derivationsOf, expectationText, type Reader } from '$lib/paper';
import { offeredIn, type PracticeDraft } from './draft';

/** A field that is filled in for the person: what, by which rules, and how the numbers came about. */
export function givenView(draft: PracticeDraft, id: FieldId, reader: Reader) {
	const { lang } = reader;
	const { demands = [], answer } = plannedField(draft.plan, id) ?? {};
	const offered = offeredIn(draft)[id];
	return {
		id,
		label: say(field(id).label, lang),
		value: answerText(id, answer, reader, offered),
		reasons: demands.map(({ rule: ruleId, expectation }) => {
			const rule = ruleById(ruleId);
			return {
				title: say(rule.title, lang),
				why: say(rule.why, lang),
				expected: expectationText(id, expectation, reader, offered),
				lesson: `/${lang}/lessons/${rule.lesson}`,
				derivations: derivationsOf(expectation, reader)
			};
		})
	};
}
