import { addDays } from '$lib/learning';
import * as v from 'valibot';
import { accept, refuse, type Acting, type Decision } from '../decision';
import { instant } from '../shapes';
import { dayOf } from '../standing/calendar-day';
import type { State } from '../state';
import { unlessPerson, unlessRole } from './guards';

/** Long enough for an audit, short enough that a forgotten one closes by itself. The shop can open it again. */
const LONGEST_DAYS = 31;

/** A lead opens the record to an auditor until a moment. */
export function openAuditor(state: State, wish: { person: string; until: string }, acting: Acting): Decision {
	const refused = unlessRole(state, acting, 'lead') ?? unlessPerson(state, wish.person);
	if (refused) return refused;
	if (!state.people.get(wish.person)?.roles.includes('auditor'))
		return refuse('malformed', 'person', ['auditor-only']);
	if (!v.is(instant, wish.until)) return refuse('malformed', 'until', ['not-a-moment']);
	if (wish.until <= acting.now) return refuse('backdated', 'until');
	if (dayOf(state, wish.until) > addDays(dayOf(state, acting.now), LONGEST_DAYS))
		return refuse('malformed', 'until', ['too-long', String(LONGEST_DAYS)]);
	return accept({ event: 'auditor.opened', data: wish });
}
