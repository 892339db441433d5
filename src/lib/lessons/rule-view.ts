import { field, ruleById, type RuleExample } from '$lib/engine';
import { say } from '$lib/i18n';
import { derivationsOf, expectationText, provenanceView, type Reader } from '$lib/paper';
import type { LimitLine, RuleView } from './lesson-view';

/** As many example jobs as are shown beside one another; more would be a table nobody reads. */
const SHOWN = 4;

/** One line per different expectation, in the order of the examples. */
function differing(lines: readonly (LimitLine & { of: RuleExample })[]) {
	const values = new Set<string>();
	return lines.filter(({ value }) => !values.has(value) && values.add(value)).slice(0, SHOWN);
}

/** A rule with what it expects on the example jobs of this shop. */
export function ruleView(id: string, examples: readonly RuleExample[], reader: Reader): RuleView {
	const { lang } = reader;
	const rule = ruleById(id);
	const lines = differing(
		examples.map((of) => ({
			of,
			example: of.id,
			name: say(of.name, lang),
			sheet: { title: of.sheet.title, lang: of.sheet.lang },
			value: expectationText(rule.field, of.expectation, reader)
		}))
	);
	const [first] = lines;
	return {
		id,
		title: say(rule.title, lang),
		href: `/${lang}/rules/${id}`,
		severity: rule.severity,
		asks: say(field(rule.field).label, lang),
		lines: lines.map(({ example, name, sheet, value }) => ({ example, name, sheet, value })),
		derivations: first ? derivationsOf(first.of.expectation, reader) : [],
		provenance: provenanceView(rule.provenance)
	};
}
