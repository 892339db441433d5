import { accept, refuse, type Acting, type Decision } from '../decision';
import type { EventData } from '../event';
import type { State } from '../state';
import { ifDrillOpen, unlessPerson } from './guards';

/** Everything about the attempt but whose it is: that is whoever acts. */
export type HandInPractice = {
	readonly sheet: Omit<EventData<'practice.handed-in'>, 'person'>;
	readonly first: Omit<EventData<'practice.first-check'>, 'person' | 'attempt'>;
};

/** Keeps a practice attempt. It is never evidence; it only keeps its ticket out of later proving. */
export function handInPractice(state: State, { sheet, first }: HandInPractice, acting: Acting): Decision {
	const person = acting.actor;
	const refused = unlessPerson(state, person) ?? ifDrillOpen(state, person);
	if (refused) return refused;
	if (state.attempts.practice.get(person)?.some(({ attempt }) => attempt === sheet.attempt))
		return refuse('id-taken', 'attempt');
	return accept(
		{ event: 'practice.handed-in', data: { ...sheet, person } },
		{ event: 'practice.first-check', data: { ...first, person, attempt: sheet.attempt } }
	);
}
