import { fieldsAt, TRAPS } from '$lib/drills';
import { grade, ruleById, STATION_NAMES, type FieldId, type Finding } from '$lib/engine';
import { say } from '$lib/i18n';
import { derivationsOf, expectationText, fieldView, findingView, type Reader } from '$lib/paper';
import { answersIn } from './answers';
import { askedIn, type HintStep, type PracticeDraft } from './draft';

/** The rung of the hint ladder that is open: where to look, then the rule, then the worked line. */
function hintView(draft: PracticeDraft, id: FieldId, reader: Reader) {
	const step: HintStep = draft.hints[id] ?? 0;
	const demands = draft.plan.fields.find(({ field }) => field === id)?.demands ?? [];
	const rules = demands.map(({ rule }) => ruleById(rule));
	return {
		step,
		lessons: step >= 1 ? [...new Set(rules.map(({ lesson }) => `/${reader.lang}/lessons/${lesson}`))] : [],
		rules:
			step >= 2
				? rules.map((rule) => ({ title: say(rule.title, reader.lang), why: say(rule.why, reader.lang) }))
				: [],
		worked:
			step >= 3
				? demands.map(({ expectation }) => ({
						expected: expectationText(id, expectation, reader),
						derivations: derivationsOf(expectation, reader)
					}))
				: []
	};
}

const worst = (findings: readonly Finding[]) =>
	findings.find(({ severity }) => severity === 'safety-stop') ??
	findings.find(({ zone }) => zone === 'red') ??
	findings[0];

/** The station in hand: its fields with what was put in, findings once it was checked, hints as far as opened. */
export function stationView(draft: PracticeDraft, reader: Reader) {
	const station = draft.stations[draft.at]!;
	const ids = fieldsAt(draft.plan, station);
	const { all } = grade(draft.plan, answersIn(draft.entries), ids);
	const checked = draft.checked.includes(station);
	return {
		station,
		last: draft.at === draft.stations.length - 1,
		checked,
		line: draft.stations.map((one, index) => ({
			id: one,
			label: say(STATION_NAMES[one], reader.lang),
			place:
				index < draft.at ? ('done' as const) : index === draft.at ? ('current' as const) : ('open' as const)
		})),
		fields: ids.map((id) => {
			const ofField = all.filter(({ field }) => field === id);
			const finding = worst(ofField.filter(({ zone }) => zone !== 'green')) ?? ofField[0];
			return {
				field: {
					...fieldView(id, draft.entries[id] ?? {}, reader),
					...(checked && finding ? { finding: findingView(finding, reader) } : {})
				},
				hint: hintView(draft, id, reader)
			};
		})
	};
}

/** What comes out when the drill is handed in: every breach in words, and what had been woven into the ticket. */
export function handedInView(draft: PracticeDraft, reader: Reader) {
	const findings = grade(draft.plan, answersIn(draft.entries), askedIn(draft));
	return {
		result: findings.result,
		breaches: findings.breaches.map((finding) => findingView(finding, reader)),
		credit: {
			kept: findings.all.filter(({ zone }) => zone === 'green').length,
			amber: findings.breaches.filter(({ zone }) => zone === 'amber').length,
			of: findings.all.length
		},
		traps: TRAPS.filter(({ id }) => draft.traps.includes(id)).map(({ title, rule }) => ({
			title: say(title, reader.lang),
			href: `/${reader.lang}/rules/${rule}`
		})),
		decision: draft.plan.decision,
		reasons: draft.plan.reasons.map((id) => say(ruleById(id).title, reader.lang))
	};
}
