import type { Figure } from '$lib/drills';
import { DEFECTS, ruleById } from '$lib/engine';
import { format, say } from '$lib/i18n';
import { quantityText } from '../quantity-text';
import type { Reader } from '../reader';

type CaseFile = Extract<Figure, { kind: 'case-file' }>;

/** A case as it is told once it is solved: what the defect was, how likely each cause, how much each test would tell. */
export function caseToldView({ panel, told }: CaseFile, reader: Reader) {
	const { lang } = reader;
	const title = (rule: string) => say(ruleById(rule).title, lang);
	return {
		defect: say(DEFECTS[panel.defect], lang),
		causes: told.causes.map(({ rule, before, after, was }) => ({
			rule,
			title: title(rule),
			before: quantityText(before, 'fraction', reader),
			after: quantityText(after, 'fraction', reader),
			was
		})),
		tests: told.tests
			.filter(({ rules }) => rules.length > 0)
			.map(({ rules, bits }) => ({
				titles: rules.map(title),
				bits: format.number(bits, lang, { atLeast: 2, atMost: 2 })
			}))
	};
}
