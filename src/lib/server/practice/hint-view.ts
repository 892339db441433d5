import { plannedField, ruleById, type FieldId } from '$lib/engine';
import { say } from '$lib/i18n';
import { derivationsOf, expectationText, type Reader } from '$lib/paper';
import { offeredIn, type HintStep, type PracticeDraft } from './draft';

/** The rung of the hint ladder that is open: where to look, then the rule, then the worked line. */
export function hintView(draft: PracticeDraft, id: FieldId, reader: Reader) {
	const step: HintStep = draft.hints[id] ?? 0;
	const demands = plannedField(draft.plan, id)?.demands ?? [];
	const rules = [...new Set(demands.map(({ rule }) => rule))].map(ruleById);
	return {
		step,
		lessons: step >= 1 ? [...new Set(rules.map(({ lesson }) => `/${reader.lang}/lessons/${lesson}`))] : [],
		rules:
			step >= 2
				? rules.map((rule) => ({ title: say(rule.title, reader.lang), why: say(rule.why, reader.lang) }))
				: [],
		worked:
			step >= 3
				? demands.map(({ expectation }) => ({
						expected: expectationText(id, expectation, reader, offeredIn(draft)[id]),
						derivations: derivationsOf(expectation, reader)
					}))
				: []
	};
}
