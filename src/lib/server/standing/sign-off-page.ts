import type { Reader } from '$lib/paper';
import {
	dayOf,
	overridden,
	refreshersDue,
	REASON_LENGTH,
	schemeAt,
	signOff,
	signRefresher,
	type Acting,
	type Refusal,
	type Run,
	type State
} from '$lib/records';
import { say } from '$lib/i18n';
import { certificationStates, type CompetencyId } from '$lib/learning';
import type { App } from '../app';
import { nameOf } from '../shown-text';
import { areasOf } from './areas';
import { momentOf } from './moment';
import { onRefresherOf } from './own-of';
import { practicalView } from './practical-view';
import { drillLog, runEvidence } from './run-evidence';
import { safetyView } from './safety-view';
import { UNDECLARED, UNWRITTEN } from './unwritten';

/** The run a signature would rest on: that of the refresher, or the one that counts towards the sign-off. */
function restsOn(state: State, person: string, incident: string | null, counted: string | null): Run | null {
	const run = incident
		? refreshersDue(state, person).find((due) => due.incident === incident)?.provenBy
		: counted;
	return state.attempts.runs.get(run ?? '') ?? null;
}

/** Why the record would refuse this signer today; null when it would take the signature. */
function against(state: State, acting: Acting, person: string, competency: string, incident: string | null) {
	const on = dayOf(state, acting.now);
	const decision = incident
		? onRefresherOf({ person, competency }, signRefresher)(
				state,
				{ incident, conflict: UNDECLARED, watchedBy: [], on },
				acting
			)
		: signOff(
				state,
				{
					signOff: 'asked',
					person,
					competency,
					conflict: UNDECLARED,
					watchedBy: [],
					on,
					reason: { ref: UNWRITTEN, length: REASON_LENGTH }
				},
				acting
			);
	return decision.ok ? null : decision.refusal;
}

/** Names the evidence on the page, so that nobody signs for something that came after they looked. */
const fingerprint = (run: Run | null, practical: string | null, lessons: readonly string[]) =>
	[run?.run ?? '', practical ?? '', ...lessons].join(' ');

/** Everybody who can have watched: all who work here but the person themselves, by name. */
const watchersOf = (app: App, person: string, lang: Reader['lang']) =>
	[...app.journal.state.people.values()]
		.filter(({ id, erasedAt, roles }) => id !== person && !erasedAt && !roles.includes('auditor'))
		.map(({ id }) => ({ id, label: nameOf(app, id, lang) }))
		.sort((a, b) => a.label.localeCompare(b.label, lang));

/**
 * The evidence of one competency on one page, for whoever is to sign for it.
 * @param incident signs the refresher of that incident instead of the whole competency
 */
export function signOffPage(
	app: App,
	{ person, competency, incident }: { person: string; competency: CompetencyId; incident: string | null },
	signer: string,
	reader: Reader
) {
	const { state } = app.journal;
	const { lang } = reader;
	const acting: Acting = { ...momentOf(app), actor: signer };
	const area = areasOf(app, person, lang).find(({ id }) => id === competency)!;
	const { evidence, standing, refreshers } = area.certification;
	const run = restsOn(state, person, incident, evidence.run);
	const practical = incident ? null : (state.practicals.get(evidence.practicalId ?? '') ?? null);
	const earlier = [...state.attempts.runs.values()].filter(
		(each) =>
			each.person === person && each.competency === competency && each.concluded && each.run !== run?.run
	);
	const limits = schemeAt(state, acting.now)?.limits;
	return {
		person,
		name: nameOf(app, person, lang),
		competency,
		title: area.name,
		state: say(certificationStates[standing.state], lang),
		incident,
		/** There is a signature in force, so that this one would renew it. */
		renewal: !incident && standing.state === 'signed',
		refreshers: refreshers.map((due) => ({ incident: due.incident, proven: due.provenBy !== null })),
		lessons: {
			missing: evidence.missing,
			done: evidence.done.map((lesson) => ({
				lesson,
				on: dayOf(state, state.lessons.get(person)?.get(lesson)?.at ?? acting.now)
			}))
		},
		run: run && { ...runEvidence(app, run, lang), log: drillLog(app, run, lang) },
		earlier: earlier.map((each) => runEvidence(app, each, lang)),
		safety: safetyView(app, person, lang),
		practical: practical && practicalView(app, practical, reader),
		passedOver: !incident && limits ? overridden(state, person, evidence.practicalId, limits) : [],
		reasonLength: REASON_LENGTH,
		against: against(state, acting, person, competency, incident) as Refusal | null,
		watchers: watchersOf(app, person, lang),
		today: dayOf(state, acting.now),
		seen: fingerprint(run, practical?.practical ?? null, evidence.done),
		signer: nameOf(app, signer, lang)
	};
}

export type SignOffPage = ReturnType<typeof signOffPage>;
