import { DEFECTS, RULES, type DefectId } from '$lib/engine';
import { say, terms, type Lang } from '$lib/i18n';
import { evidenceGaps, isIsoDate, type CompetencyId } from '$lib/learning';
import { dayOf, provingHistory, safetyStanding, schemeAt, type RefresherDue } from '$lib/records';
import type { App } from '../app';
import type { Area } from './areas';
import { momentOf } from './moment';

type InArea = { readonly competency: string; readonly area: CompetencyId };

type Waits = {
	/** First day of the next try, while days have to pass. */
	readonly days: string | null;
	readonly lessons: boolean;
	/** First day a lead can admit the person anew, when all tries are used up. */
	readonly newApplication: string | null;
};

/** Something for a person to do, or to wait for. */
export type Work =
	| { readonly kind: 'drill'; readonly href: string }
	| { readonly kind: 'safety-lessons'; readonly lessons: readonly string[] }
	| { readonly kind: 'safety-closed' }
	| {
			readonly kind: 'refresher';
			readonly incident: string;
			readonly competency: string;
			readonly defect: string;
			readonly since: string;
			/** Lesson sections of exactly the rules that slipped. */
			readonly sections: readonly { readonly title: string; readonly href: string }[];
			readonly proven: boolean;
			readonly href: string;
	  }
	| ({ readonly kind: 'lessons'; readonly lessons: readonly string[] } & InArea)
	| ({
			readonly kind: 'proving';
			readonly begun: boolean;
			readonly waits: Waits | null;
			readonly href: string;
	  } & InArea)
	| ({ readonly kind: 'practical' | 'signature' | 'safety-drills' } & InArea);

/** The section of a lesson that teaches a rule, as a link. */
const sectionOf = (rule: string, lang: Lang) => {
	const found = RULES.find(({ id }) => id === rule);
	return found
		? { title: say(found.title, lang), href: `/${lang}/lessons/${found.lesson}` }
		: { title: rule, href: `/${lang}/rules` };
};

const defectName = (defect: string, lang: Lang): string =>
	defect in DEFECTS ? say(DEFECTS[defect as DefectId], lang) : defect;

function refresherWork({ journal }: Pick<App, 'journal'>, due: RefresherDue, lang: Lang): Work {
	const sections = due.rules.map((rule) => sectionOf(rule, lang));
	const run = [...journal.state.attempts.runs.values()].find(
		(each) => each.incident === due.incident && !each.concluded
	);
	return {
		kind: 'refresher',
		incident: due.incident,
		competency: terms[lang].station[due.competency as CompetencyId] ?? due.competency,
		defect: defectName(due.defect, lang),
		since: dayOf(journal.state, due.since),
		// two rules may be taught in one section
		sections: [...new Map(sections.map((section) => [section.href, section])).values()],
		proven: due.provenBy !== null,
		href: `/${lang}/proving${run ? `/${run.run}` : ''}`
	};
}

/** What keeps a person from beginning a run: days, lessons, or a lead; null when nothing does. */
function waitsFor(app: App, person: string, competency: CompetencyId): Waits | null {
	const moment = momentOf(app);
	const { state } = app.journal;
	const limits = schemeAt(state, moment.now)?.limits;
	if (!limits) return null;
	const tries = provingHistory(state, person, competency, limits, moment);
	if (tries.may) return null;
	return {
		days: tries.waitsFor.includes('days') && isIsoDate(tries.from) ? tries.from : null,
		lessons: tries.waitsFor.includes('lessons'),
		newApplication: tries.waitsFor.includes('new-application') ? tries.from : null
	};
}

/** What is open in one competency that is being trained, in the order it is worked through. */
function trainingWork(app: App, person: string, area: Area, lang: Lang): Work[] {
	const { standing, evidence } = area.certification;
	const at = { competency: area.name, area: area.id };
	if (standing.state === 'eligible') return [{ kind: 'signature', ...at }];
	if (standing.state !== 'in-training') return [];
	const gaps = evidenceGaps(evidence);
	const run = [...app.journal.state.attempts.runs.values()].find(
		(each) =>
			each.person === person && each.competency === area.id && each.incident === null && !each.concluded
	);
	const work: Work[] = [];
	if (gaps.includes('lessons')) work.push({ kind: 'lessons', ...at, lessons: evidence.missing });
	if (gaps.includes('verdict') && (run || !gaps.includes('lessons')))
		work.push({
			kind: 'proving',
			...at,
			begun: run !== undefined,
			waits: run ? null : waitsFor(app, person, area.id),
			href: `/${lang}/proving${run ? `/${run.run}` : ''}`
		});
	if (gaps.includes('practical') && !gaps.includes('verdict')) work.push({ kind: 'practical', ...at });
	if (gaps.length === 1 && gaps[0] === 'safety-gate') work.push({ kind: 'safety-drills', ...at });
	return work;
}

/** The drill a person has open, the safety lessons after a stop, refreshers, and what training asks for next. */
export function openWork(app: App, person: string, areas: readonly Area[], lang: Lang): Work[] {
	const { state } = app.journal;
	const moment = momentOf(app);
	const drill = state.attempts.drills.get(state.attempts.open.get(person) ?? '');
	const limits = schemeAt(state, moment.now)?.limits;
	const gate = limits && safetyStanding(state, person, limits.safety).state;
	return [
		...(drill ? [{ kind: 'drill' as const, href: `/${lang}/proving/${drill.run}/${drill.drill}` }] : []),
		...(gate === 'stopped'
			? [{ kind: 'safety-lessons' as const, lessons: moment.requirements.lessonsOf('safety') }]
			: []),
		...(gate === 'closed' ? [{ kind: 'safety-closed' as const }] : []),
		...areas.flatMap(({ certification }) =>
			certification.refreshers.map((due) => refresherWork(app, due, lang))
		),
		...areas.flatMap((area) => trainingWork(app, person, area, lang))
	];
}
