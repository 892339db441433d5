import {
	DEFECTS,
	field,
	ruleById,
	type Outcome,
	type OutcomeDefect,
	type OutcomeMeasure,
	type Traced
} from '$lib/engine';
import { outcome as messages, say, type Lang } from '$lib/i18n';
import { derivationView } from './derivation-view';
import { quantityText, windowText } from './quantity-text';
import type { Reader } from './reader';

/** A rule as a line of the page: its name, what its breach leads to, and the section that teaches it. */
function ruleLine(id: string, lang: Lang) {
	const rule = ruleById(id);
	return {
		rule: id,
		title: say(rule.title, lang),
		outcome: say(rule.outcome, lang),
		lesson: `/${lang}/lessons/${rule.lesson}`
	};
}

function defectView({ defect, severity, from }: OutcomeDefect, { lang }: Reader) {
	const words = messages[lang];
	return {
		defect,
		severity,
		name: say(DEFECTS[defect], lang),
		severityWord: words.severity[severity],
		from: from.map(({ rule, direction }) => ({
			...ruleLine(rule, lang),
			way: field(ruleById(rule).field).kind === 'quantity' ? words.way[direction] : words.way.wrong
		}))
	};
}

const limitText = ({ min, max }: { min: Traced | null; max: Traced | null }, reader: Reader) => {
	const one = max ?? min;
	const window = { min: min?.value ?? -Infinity, max: max?.value ?? Infinity };
	return one ? windowText(window, one.dimension, reader) : '';
};

function measureView(measure: OutcomeMeasure, reader: Reader) {
	const words = messages[reader.lang];
	const { id, degree, side } = measure;
	const told = {
		id,
		degree,
		name: words.measure[id],
		stands: degree && side ? words.stands[degree](words[side][id]) : words.asWanted
	};
	if (measure.kind === 'index')
		return { ...told, found: words.byEye, onGauge: false, wanted: '', derivations: [] };
	const { value, wanted } = measure;
	const numbers = [value, wanted.min, wanted.max].filter((one) => one !== null);
	return {
		...told,
		found: value ? quantityText(value.value, value.dimension, reader) : words.beyondLaw,
		onGauge: value !== null,
		wanted: limitText(wanted, reader),
		derivations: numbers.map((one) => derivationView(one, reader))
	};
}

/** What would come out of the oven, in the reader's words and units. Every line is short enough to read standing up. */
export function outcomeView(outcome: Outcome, reader: Reader) {
	const { lang } = reader;
	return {
		stops: outcome.exposure.flatMap(({ harm, rules }) =>
			rules.map((rule) => ({ ...ruleLine(rule, lang), harm: messages[lang].harm[harm] }))
		),
		defects: outcome.defects.map((one) => defectView(one, reader)),
		measures: outcome.measures.map((one) => measureView(one, reader)),
		unset: outcome.unset.map((id) => say(field(id).label, lang))
	};
}
