import { RULES, STATION_NAMES, STATIONS } from '$lib/engine';
import { reports, say, type Lang } from '$lib/i18n';
import type { FirstAttempt } from '$lib/records';
import { ruleLine } from '../incidents/rule-line';
import { inWorkingOrder } from './working-order';

/** How often a rule was asked and how often it was broken. */
type Count = { readonly wrong: number; readonly of: number };

const countOf = (attempts: readonly FirstAttempt[], how: FirstAttempt['how'], rule: string): Count => {
	const asked = attempts.filter((attempt) => attempt.how === how && attempt.kept.has(rule));
	return { wrong: asked.filter(({ kept }) => !kept.get(rule)).length, of: asked.length };
};

/** Every rule that was broken at least once, station by station in working order, and how many never were. */
export function brokenRules(attempts: readonly FirstAttempt[], lang: Lang) {
	const asked = inWorkingOrder(attempts.flatMap(({ kept }) => [...kept.keys()]));
	const lines = asked.map((id) => ({
		...ruleLine(id, lang),
		station: RULES.find((rule) => rule.id === id)?.station,
		practice: countOf(attempts, 'practice', id),
		proving: countOf(attempts, 'proving', id)
	}));
	const broken = lines.filter(({ practice, proving }) => practice.wrong + proving.wrong > 0);
	const stations = [...STATIONS, undefined].map((station) => ({
		name: station ? say(STATION_NAMES[station], lang) : reports[lang].goneRules,
		rules: broken.filter((line) => line.station === station)
	}));
	return {
		stations: stations.filter(({ rules }) => rules.length > 0),
		alwaysKept: lines.length - broken.length
	};
}
