import { addMonths, validity, type Scheme } from '$lib/learning';
import { accept, refuse, type Acting, type Decision } from '../decision';
import type { Conflict } from '../events/conflict';
import type { SignOff } from '../folds/sign-offs';
import { dayOf } from '../standing/calendar-day';
import { certification } from '../standing/certification';
import { safetyStanding } from '../standing/safety';
import { schemeAt } from '../standing/scheme';
import type { State } from '../state';
import { signing, whyNot } from './authorised';
import { ifDrillOpen, isCompetency, unlessPerson, unlessRole } from './guards';
import { overriding, unlessReasoned, type Reason } from './override';

/** One person, one competency, one deliberate act: there is no wish for several. */
export interface Sign {
	readonly signOff: string;
	readonly person: string;
	readonly competency: string;
	readonly conflict: Conflict;
	/** Who watched the proving; nobody, if the list is empty, and that is printed. */
	readonly watchedBy: readonly string[];
	/** The day the signer believes it is: a signature is for today. */
	readonly on: string;
	readonly reason: Reason | null;
}

/** What the signer would pass over by signing; each needs a reason. */
export function overridden(state: State, person: string, practical: string | null, limits: Scheme): string[] {
	const what: string[] = [];
	if (safetyStanding(state, person, limits.safety).missesSincePass > 0) what.push('safety-misses-since-pass');
	if (practical && state.practicals.get(practical)?.override) what.push('practical-reading');
	return what;
}

/** A full evaluation is the last signature that rested on all parts taken anew. */
function evaluatedOn(before: SignOff | null, full: boolean, today: string, months: number): string {
	return full || !before ? today : addMonths(before.reevaluationDue, -months);
}

/** A supervisor signs that a person is fit to work alone in one competency, on evidence that is complete. */
export function signOff(state: State, wish: Sign, acting: Acting): Decision {
	const { person, competency, conflict } = wish;
	const refused =
		unlessRole(state, acting, 'supervisor') ??
		unlessPerson(state, person) ??
		ifDrillOpen(state, acting.actor);
	if (refused) return refused;
	if (!isCompetency(competency)) return refuse('unknown-competency', 'competency');
	if (state.signOffs.byId.has(wish.signOff)) return refuse('id-taken', 'signOff');
	const scheme = schemeAt(state, acting.now);
	const today = dayOf(state, acting.now);
	if (wish.on !== today) return refuse(wish.on < today ? 'backdated' : 'in-the-future', 'on', [today]);
	for (const watcher of wish.watchedBy)
		if (!state.people.has(watcher)) return refuse('unknown-person', 'watchedBy');

	const {
		standing,
		evidence,
		signOff: before,
		refreshers
	} = certification(state, person, competency, acting);
	const may = signing(state, acting, { id: person, state: standing.state, evidence }, competency, conflict);
	const against = whyNot(may);
	if (against) return against;
	if (refreshers.length > 0)
		return refuse(
			'refresher-open',
			'person',
			refreshers.map(({ incident }) => incident)
		);
	const { run, practicalId: practical } = evidence;
	if (run === null || practical === null)
		throw new Error('complete evidence names its run and its practical');

	const what = overridden(state, person, practical, scheme.limits);
	const unreasoned = unlessReasoned(what, wish.reason);
	if (unreasoned) return unreasoned;
	const { validUntil, continuityDue, reevaluationDue } = validity(scheme.limits, {
		on: today,
		evaluatedOn: evaluatedOn(before, evidence.full, today, scheme.limits.validity.reevaluationMonths),
		confirmedOn: null,
		holdsSafetySkill: acting.requirements.holdsSafetySkill(competency)
	});
	return accept({
		event: 'signoff.granted',
		data: {
			signOff: wish.signOff,
			person,
			competency,
			signer: acting.actor,
			meaning: 'approved',
			evidence: {
				lessons: [...evidence.done],
				run,
				practical,
				safetyDrills: safetyStanding(state, person, scheme.limits.safety).drills
			},
			conflict,
			watchedBy: [...wish.watchedBy],
			nonIndependent: may.flags.includes('non-independent'),
			foundingLead: may.flags.includes('founding-lead'),
			override: overriding(what, wish.reason),
			full: evidence.full,
			validFrom: today,
			validUntil,
			continuityDue,
			reevaluationDue,
			scheme: scheme.ref
		}
	});
}
