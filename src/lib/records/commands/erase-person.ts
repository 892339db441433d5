import { accept, refuse, type Acting, type Decision } from '../decision';
import type { State } from '../state';
import { unlessPerson, unlessRole } from './guards';
import { hasOtherLead } from './set-roles';

/**
 * A lead erases somebody's name and every free text about them. The entries stay and show when it was done;
 * the texts themselves go from the erasable store once this is in the journal.
 */
export function erasePerson(state: State, { person }: { person: string }, acting: Acting): Decision {
	const refused = unlessRole(state, acting, 'lead') ?? unlessPerson(state, person);
	if (refused) return refused;
	if (state.people.get(person)?.roles.includes('lead') && !hasOtherLead(state, person, acting.now))
		return refuse('last-lead', 'person');
	const texts = [...(state.texts.about.get(person) ?? [])];
	return accept({ event: 'person.erased', data: { person, texts } });
}
