import { field, ruleById, type Finding, type Options } from '$lib/engine';
import { expectations, findings, say } from '$lib/i18n';
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
	if (off === null) return undefined;
	if (expected.kind === 'all-of' && off === 'low') return words.missing;
	if (spec.kind !== 'quantity' || (off === 'wrong' && beyond === 0)) return words.other;
	// a distance between two temperatures is a difference, not a point on the scale
	const dimension = spec.dimension === 'temperature' ? 'temperature-difference' : spec.dimension;
	if (dimension === 'ratio' || beyond === 0) return off === 'low' ? words.lowBy : words.highBy;
	return words[off === 'wrong' ? 'away' : off](quantityText(beyond, dimension, reader));
}

/** The next thing to do about a breach. */
function todo({ zone, severity, off, expected, received }: Finding, { lang }: Reader) {
	if (zone === 'green') return undefined;
	const words = findings[lang].todo;
	if (severity === 'safety-stop') return words.stop;
	if (!received) return words.empty;
	if (expected.kind === 'all-of' && off !== 'wrong') return off === 'low' ? words.missing : words.surplus;
	// where a wrong option or order leads is told by what comes out; what is to change is the option or the order
	const chosen = expected.kind === 'one-of' || expected.kind === 'order';
	return words[(chosen ? 'wrong' : off) ?? 'wrong'];
}

/**
 * One finding in words, with its derivation and the way to the rule.
 * @param offered options of this one question, where they are not the field's own
 */
export function findingView(finding: Finding, reader: Reader, offered?: Options) {
	const { lang } = reader;
	const rule = ruleById(finding.rule);
	const [main, ...rest] = derivationsOf(finding.expected, reader);
	const far = howFar(finding, reader);
	const next = todo(finding, reader);
	return {
		id: `${finding.field}-${finding.rule}`,
		label: say(field(finding.field).label, lang),
		zone: finding.zone,
		severity: finding.severity,
		received: answerText(finding.field, finding.received, reader, offered),
		expected: expectationText(finding.field, finding.expected, reader, offered),
		...(far ? { howFar: far } : {}),
		...(next ? { next } : {}),
		lesson: `/${lang}/lessons/${rule.lesson}`,
		rule: { title: say(rule.title, lang), href: `/${lang}/rules/${rule.id}` },
		why: say(rule.why, lang),
		outcome: say(rule.outcome, lang),
		...(main ? { derivation: rest.length ? { ...main, from: [...(main.from ?? []), ...rest] } : main } : {})
	};
}
