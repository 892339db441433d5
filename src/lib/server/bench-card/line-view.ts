import {
	AUTHORITY_NAMES,
	field,
	ruleById,
	windowOf,
	type Demand,
	type FieldId,
	type PlannedField
} from '$lib/engine';
import { benchCard, say } from '$lib/i18n';
import { answerText, derivationsOf, expectationText, windowText, type Reader } from '$lib/paper';
import { shortDerivation } from './sums';

/** What a rule leaves open, in words; nothing where the answer says it all. */
function leavesOpen(id: FieldId, { expectation }: Demand, reader: Reader): string {
	const window =
		field(id).kind === 'quantity' || (expectation.kind === 'one-of' && expectation.options.length > 1);
	return window ? expectationText(id, expectation, reader) : '';
}

const ruleOf = (id: string, { lang }: Reader) => ({
	title: say(ruleById(id).title, lang),
	href: `/${lang}/rules/${id}`
});

function basisView(id: FieldId, demand: Demand, alone: boolean, told: Set<string>, reader: Reader) {
	return {
		rule: ruleOf(demand.rule, reader),
		authority: say(AUTHORITY_NAMES[demand.authority], reader.lang),
		/** The same in one word, for paper. */
		word: benchCard[reader.lang].word[demand.authority],
		stop: demand.severity === 'safety-stop',
		/** Its own limits, where several rules speak and the line shows what is left of all of them. */
		window: alone && field(id).kind === 'quantity' ? '' : leavesOpen(id, demand, reader),
		...shortDerivation(demand.expectation, told, reader),
		derivations: derivationsOf(demand.expectation, reader)
	};
}

/**
 * One line of the card: what to set, within which limits, by whose word, and how its numbers came about.
 * @param told sums that stand on the card already
 */
export function lineView(
	{ field: id, demands, superseded, answer }: PlannedField,
	told: Set<string>,
	reader: Reader
) {
	const spec = field(id);
	const window = spec.kind === 'quantity' ? windowText(windowOf(demands), spec.dimension, reader) : '';
	const set = answerText(id, answer, reader) || benchCard[reader.lang].nothing;
	return {
		id,
		label: say(spec.label, reader.lang),
		number: spec.kind === 'quantity',
		set,
		window: window === set ? '' : window,
		bases: demands.map((demand) => basisView(id, demand, demands.length === 1, told, reader)),
		gaveWay: superseded.map((demand) => ({
			rule: ruleOf(demand.rule, reader).title,
			window: leavesOpen(id, demand, reader),
			authority: say(AUTHORITY_NAMES[demand.authority], reader.lang)
		}))
	};
}

export type CardLine = ReturnType<typeof lineView>;
