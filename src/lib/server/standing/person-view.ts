import { certificationStates } from '$lib/learning';
import { say } from '$lib/i18n';
import type { Reader } from '$lib/paper';
import { dayOf, type Acting } from '$lib/records';
import type { App } from '../app';
import { nameOf } from '../shown-text';
import { areasOf, type Area } from './areas';
import { historyOf, type HistoryLine } from './history';
import { momentOf } from './moment';
import { offeredActs, offeredStarts } from './offered-acts';
import { practicalView } from './practical-view';
import { rackView } from './rack';
import { runEvidence } from './run-evidence';
import { safetyView } from './safety-view';
import { signOffView } from './sign-off-view';

/** Lessons of a competency with the day each was last done; null where it still has to be. */
function lessonsOf({ journal: { state } }: Pick<App, 'journal'>, person: string, { certification }: Area) {
	const { done, missing } = certification.evidence;
	const doneAt = (lesson: string) => state.lessons.get(person)?.get(lesson)?.at;
	return [...done, ...missing].sort().map((lesson) => {
		const at = doneAt(lesson);
		return { lesson, counts: done.includes(lesson), on: at ? dayOf(state, at) : null };
	});
}

function areaView(app: App, person: string, area: Area, acting: Acting, reader: Reader) {
	const { state } = app.journal;
	const { lang } = reader;
	const { id, name, certification } = area;
	const own = <T extends { person: string; competency: string }>(items: Iterable<T>) =>
		[...items].filter((each) => each.person === person && each.competency === id).reverse();
	return {
		id,
		name,
		state: say(certificationStates[certification.standing.state], lang),
		refreshers: certification.refreshers.map(({ incident, provenBy }) => ({ incident, provenBy })),
		lessons: lessonsOf(app, person, area),
		runs: own(state.attempts.runs.values()).map((run) => runEvidence(app, run, lang)),
		practicals: own(state.practicals.values()).map((each) => practicalView(app, each, reader)),
		signOffs: own(state.signOffs.byId.values()).map((each) => signOffView(app, each, lang)),
		acts: offeredActs(state, acting, person, id)
	};
}

/** One competency of a person as its page shows it. */
export type PersonArea = ReturnType<typeof areaView> & { readonly history: readonly HistoryLine[] };

/**
 * Everything the record says about one person, as this viewer may see it, with the acts open to the viewer. The person
 * themselves gets none: nobody acts on their own record.
 */
export function personView(app: App, person: string, viewer: string, reader: Reader) {
	const { state } = app.journal;
	const { lang } = reader;
	const acting: Acting = { ...momentOf(app), actor: viewer };
	const areas = areasOf(app, person, lang);
	const history = historyOf(app, person, lang);
	return {
		id: person,
		name: nameOf(app, person, lang),
		roles: state.people.get(person)?.roles ?? [],
		own: person === viewer,
		panels: rackView(state, areas, ({ id }) => `#${id}`),
		safety: safetyView(app, person, lang),
		safetyStarts: offeredStarts(state, acting, person, 'safety'),
		areas: areas.map((area) => ({
			...areaView(app, person, area, acting, reader),
			history: history.get(area.id) ?? []
		}))
	};
}
