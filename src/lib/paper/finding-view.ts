import { field, ruleById, type Finding } from '$lib/engine';
import { expectations, say } from '$lib/i18n';
import { answerText } from './answer-text';
import { derivationsOf } from './derivation-view';
import { expectationText } from './expectation-text';
import { quantityText } from './quantity-text';
import type { Reader } from './reader';

function howFar({ field: id, off, beyond, expected, received }: Finding, reader: Reader) {
	// an empty entry is no distance away from anything
	if (!received) return undefined;
	const words = expectations[reader.lang];
	const spec = field(id);
	if (off === 'wrong') return words.other;
	if (expected.kind === 'all-of') return off === 'low' ? words.missing : words.other;
	if (spec.kind !== 'quantity' || off === null) return undefined;
	// a distance between two temperatures is a difference, not a point on the scale
	const dimension = spec.dimension === 'temperature' ? 'temperature-difference' : spec.dimension;
	if (dimension === 'ratio' || beyond === 0) return off === 'low' ? words.lowBy : words.highBy;
	return words[off](quantityText(beyond, dimension, reader));
}

/** One finding in words, with its derivation and the way to the rule. */
export function findingView(finding: Finding, reader: Reader) {
	const { lang } = reader;
	const rule = ruleById(finding.rule);
	const [main, ...rest] = derivationsOf(finding.expected, reader);
	const far = howFar(finding, reader);
	return {
		id: `${finding.field}-${finding.rule}`,
		label: say(field(finding.field).label, lang),
		zone: finding.zone,
		severity: finding.severity,
		received: answerText(finding.field, finding.received, reader),
		expected: expectationText(finding.field, finding.expected, reader),
		...(far ? { howFar: far } : {}),
		rule: { title: say(rule.title, lang), href: `/${lang}/rules/${rule.id}` },
		why: say(rule.why, lang),
		outcome: say(rule.outcome, lang),
		...(main ? { derivation: rest.length ? { ...main, from: [...(main.from ?? []), ...rest] } : main } : {})
	};
}
