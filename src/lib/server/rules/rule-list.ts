import { AUTHORITY_NAMES, RULES, STATION_NAMES, STATIONS, type Rule } from '$lib/engine';
import { say, type Lang } from '$lib/i18n';

const line = (rule: Rule, lang: Lang) => ({
	id: rule.id,
	href: `/${lang}/rules/${rule.id}`,
	title: say(rule.title, lang),
	severity: rule.severity,
	competency: say(STATION_NAMES[rule.competency], lang),
	authority: say(AUTHORITY_NAMES[rule.authority], lang)
});

/** Every rule with whose word it is, by the station where it is kept, in working order. */
export const ruleList = (lang: Lang) =>
	STATIONS.map((station) => ({
		station,
		name: say(STATION_NAMES[station], lang),
		rules: RULES.filter((rule) => rule.station === station).map((rule) => line(rule, lang))
	}));
