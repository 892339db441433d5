import { accept, refuse, type Acting, type Decision } from '../decision';
import type { Conflict } from '../events/conflict';
import { dayOf } from '../standing/calendar-day';
import { certification } from '../standing/certification';
import { refreshersDue } from '../standing/refreshers';
import type { State } from '../state';
import { signing, whyNot } from './authorised';
import { ifDrillOpen, isCompetency, unlessPerson, unlessRole } from './guards';

export interface SignRefresher {
	readonly incident: string;
	readonly conflict: Conflict;
	readonly watchedBy: readonly string[];
	readonly on: string;
}

/**
 * A supervisor signs that what slipped was proven again since. The other parts stand as they were, and so do the
 * dates of the sign-off: a refresher renews nothing.
 */
export function signRefresher(state: State, wish: SignRefresher, acting: Acting): Decision {
	const found = state.incidents.get(wish.incident);
	if (!found) return refuse('unknown-incident', 'incident');
	const { person } = found;
	const refused =
		unlessRole(state, acting, 'supervisor') ??
		unlessPerson(state, person) ??
		ifDrillOpen(state, acting.actor);
	if (refused) return refused;
	const due = refreshersDue(state, person).find(({ incident }) => incident === wish.incident);
	if (!due || !isCompetency(due.competency)) return refuse('no-refresher-due', 'incident');
	const today = dayOf(state, acting.now);
	if (wish.on !== today) return refuse(wish.on < today ? 'backdated' : 'in-the-future', 'on', [today]);
	for (const watcher of wish.watchedBy)
		if (!state.people.has(watcher)) return refuse('unknown-person', 'watchedBy');

	const { standing, evidence } = certification(state, person, due.competency, acting);
	const may = signing(
		state,
		acting,
		{
			id: person,
			state: standing.state,
			evidence: {
				lessonsDone: true,
				practical: 'accepted',
				safety: evidence.safety,
				verdict: due.provenBy ? 'passed' : 'open'
			}
		},
		due.competency,
		wish.conflict
	);
	const against = whyNot(may);
	if (against) return against;
	if (due.provenBy === null) throw new Error('a proven refresher names its run');
	return accept({
		event: 'refresher.signed',
		data: {
			incident: wish.incident,
			person,
			competency: due.competency,
			run: due.provenBy,
			signer: acting.actor,
			meaning: 'approved',
			conflict: wish.conflict,
			watchedBy: [...wish.watchedBy],
			nonIndependent: may.flags.includes('non-independent'),
			foundingLead: may.flags.includes('founding-lead')
		}
	});
}
