import { ruleById, STATION_NAMES, type Cause, type Direction, type Fit } from '$lib/engine';
import { incidents, say } from '$lib/i18n';
import { answerText, expectationText, type Reader } from '$lib/paper';

/** A fit and what it rests on, for one way in which a rule can have been broken. */
type Way = {
	readonly direction: Direction;
	readonly says: string;
	readonly fit: Fit;
	readonly fitSays: string;
	readonly recorded: { readonly done: string; readonly expected: string } | null;
};

function way({ rule, direction, fit, recorded }: Cause, reader: Reader): Way {
	const words = incidents[reader.lang];
	const { field } = ruleById(rule);
	return {
		direction,
		says: words.direction[direction],
		fit,
		fitSays: words.fit[fit],
		recorded:
			recorded && (fit === 'recorded' || fit === 'kept') && recorded.answer.kind === 'quantity'
				? {
						done: answerText(field, recorded.answer, reader),
						expected: expectationText(field, recorded.expected, reader)
					}
				: null
	};
}

/** The causes rule by rule, in the order found: a rule stands where its likeliest way stands. */
export function causeViews(causes: readonly Cause[], reader: Reader) {
	const byRule = new Map<string, Cause[]>();
	for (const cause of causes) byRule.set(cause.rule, [...(byRule.get(cause.rule) ?? []), cause]);
	return [...byRule].map(([id, ways]) => {
		const rule = ruleById(id);
		return {
			rule: id,
			title: say(rule.title, reader.lang),
			href: `/${reader.lang}/rules/${id}`,
			station: say(STATION_NAMES[rule.station], reader.lang),
			competency: rule.competency,
			test: say(rule.evidence, reader.lang),
			ways: ways.map((cause) => way(cause, reader))
		};
	});
}

export type CauseView = ReturnType<typeof causeViews>[number];
