import { AUTHORITY_NAMES, field, plannedField, ruleById, type Plan } from '$lib/engine';
import { benchCard, say } from '$lib/i18n';
import { optionNames, type Reader } from '$lib/paper';

type Topic = keyof (typeof benchCard)['en']['whom'];

const ruleView = (id: string, { lang }: Reader) => {
	const rule = ruleById(id);
	return {
		title: say(rule.title, lang),
		href: `/${lang}/rules/${id}`,
		why: say(rule.why, lang),
		authority: say(AUTHORITY_NAMES[rule.authority], lang)
	};
};

/** What is to be asked, as the plan names it, and of whom. */
function questions(plan: Plan, reader: Reader) {
	const answer = plannedField(plan, 'ask-about')?.answer;
	const topics = answer?.kind === 'choices' ? answer.options : [];
	const names = optionNames('ask-about', topics, reader);
	return topics.map((topic, at) => ({
		topic: names[at] ?? topic,
		whom: benchCard[reader.lang].whom[topic as Topic]
	}));
}

/** Why a job gets no card as it stands. No setting is among it. */
export const refusalView = (plan: Plan, ticket: string, reader: Reader) => ({
	ticket,
	decision: plan.decision,
	reasons: plan.reasons.map((id) => ruleView(id, reader)),
	conflicts: plan.conflicts.map((conflict) => ({
		field: say(field(conflict.field).label, reader.lang),
		rules: conflict.rules.map((id) => ruleView(id, reader))
	})),
	questions: questions(plan, reader)
});

export type CardRefusal = ReturnType<typeof refusalView>;
