import {
	AUTHORITY_NAMES,
	DEFECTS,
	field,
	STATION_NAMES,
	type DefectId,
	type Direction,
	type Rule,
	type RuleExample
} from '$lib/engine';
import { say } from '$lib/i18n';
import { derivationsOf, expectationText, provenanceView, type Reader } from '$lib/paper';

/** Different expectations shown in full, and jobs named beside each; the rest are counted. */
const EXPECTATIONS = 6;
const JOBS = 3;

const DIRECTIONS: readonly Direction[] = ['low', 'high', 'wrong'];

/** What the rule expects on the example jobs, one entry for each different expectation. */
function expectations(rule: Rule, examples: readonly RuleExample[], reader: Reader) {
	const byText = new Map<string, RuleExample[]>();
	for (const example of examples) {
		const text = expectationText(rule.field, example.expectation, reader);
		byText.set(text, [...(byText.get(text) ?? []), example]);
	}
	const all = [...byText].map(([value, [first, ...others]]) => ({
		value,
		jobs: [first!, ...others].slice(0, JOBS).map(({ name, sheet }) => ({
			name: say(name, reader.lang),
			sheet: { title: sheet.title, lang: sheet.lang }
		})),
		moreJobs: Math.max(0, 1 + others.length - JOBS),
		derivations: derivationsOf(first!.expectation, reader)
	}));
	return { shown: all.slice(0, EXPECTATIONS), more: Math.max(0, all.length - EXPECTATIONS) };
}

const defectNames = (defects: readonly DefectId[], { lang }: Reader) =>
	defects.map((defect) => say(DEFECTS[defect], lang));

/** A rule in full: why, what it expects on this shop's example jobs and where every number comes from. */
export function ruleView(rule: Rule, examples: readonly RuleExample[], reader: Reader) {
	const { lang } = reader;
	return {
		title: say(rule.title, lang),
		severity: rule.severity,
		station: say(STATION_NAMES[rule.station], lang),
		competency: say(STATION_NAMES[rule.competency], lang),
		authority: say(AUTHORITY_NAMES[rule.authority], lang),
		asks: say(field(rule.field).label, lang),
		why: say(rule.why, lang),
		outcome: say(rule.outcome, lang),
		evidence: say(rule.evidence, lang),
		// of the rule itself; whether a lead may change a number stands with the number
		provenance: provenanceView(rule.provenance),
		lesson: `/${lang}/lessons/${rule.lesson}`,
		expectations: expectations(rule, examples, reader),
		breaks: DIRECTIONS.flatMap((direction) => {
			const defects = rule.breaks[direction];
			return defects?.length ? [{ direction, defects: defectNames(defects, reader) }] : [];
		})
	};
}
