import { field, limits, ruleById, type RuleExample } from '$lib/engine';
import { say } from '$lib/i18n';
import { derivationsOf, expectationText, provenanceView, type Reader } from '$lib/paper';
import type { LimitLine, RuleView } from './lesson-view';

/** As many example jobs as are shown beside one another; more would be a table nobody reads. */
const SHOWN = 4;

/** Two expectations of one rule with the same key read the same. */
function key({ expectation }: RuleExample): string {
	const window = limits(expectation);
	return window ? `${window.min} ${window.max}` : JSON.stringify({ ...expectation, because: undefined });
}

/** The first example of each different expectation. */
function differing(examples: readonly RuleExample[]) {
	const keys = new Set<string>();
	return examples.filter((one) => {
		const known = keys.size;
		return keys.size < SHOWN && keys.add(key(one)).size > known;
	});
}

/** A rule with what it expects on the example jobs of this shop, and on those a lesson names. */
export function ruleView(
	id: string,
	examples: readonly RuleExample[],
	named: readonly string[],
	reader: Reader
): RuleView {
	const { lang } = reader;
	const rule = ruleById(id);
	const line = ({ id: example, name, sheet, expectation }: RuleExample): LimitLine => ({
		example,
		name: say(name, lang),
		sheet: { title: sheet.title, lang: sheet.lang },
		value: expectationText(rule.field, expectation, reader)
	});
	const shown = differing(examples);
	const called = named.flatMap((example) => examples.find((one) => one.id === example) ?? []);
	const [main, ...rest] = shown[0] ? derivationsOf(shown[0].expectation, reader) : [];
	return {
		id,
		title: say(rule.title, lang),
		href: `/${lang}/rules/${id}`,
		severity: rule.severity,
		asks: say(field(rule.field).label, lang),
		lines: shown.map(line),
		on: Object.fromEntries(called.map((example) => [example.id, line(example)])),
		...(main ? { derivation: { ...main, from: [...(main.from ?? []), ...rest] } } : {}),
		provenance: provenanceView(rule.provenance)
	};
}
