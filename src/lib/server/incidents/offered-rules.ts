import { ruleById, type Cause } from '$lib/engine';
import { say, terms, type Lang } from '$lib/i18n';
import { competencies } from '$lib/learning';

/**
 * Rules that a refresher could be about: those among the causes that no test has excluded, by competency. Safety rules
 * are not among them: safety is proven at its own gate, on every drill.
 */
export function offeredRules(causes: readonly Cause[], lang: Lang) {
	const open = causes.filter(({ fit }) => fit !== 'excluded');
	const ids = (competency: string) => [
		...new Set(open.filter((cause) => cause.competency === competency).map(({ rule }) => rule))
	];
	const shown = new Set(open.filter(({ fit }) => fit === 'shown').map(({ rule }) => rule));
	return competencies
		.map(({ id }) => ({
			competency: id,
			name: terms[lang].station[id],
			rules: ids(id).map((rule) => ({
				id: rule,
				label: say(ruleById(rule).title, lang),
				shown: shown.has(rule)
			}))
		}))
		.filter(({ rules }) => rules.length > 0);
}
