import { accept, type Acting, type Decision } from '../decision';
import type { JournalEvent } from '../event';
import type { State } from '../state';
import { isOverdue } from './open-drill';
import { consequences } from './settle-drill';

/**
 * Settles every drill that was left open longer than announced, as wrong. Done by the program before anybody is
 * answered. Accepts with no events when there is none: nothing is then written.
 */
export function lapseDrills(state: State, { now }: Acting): Decision {
	const events: JournalEvent[] = [];
	// one open drill a person, so what one decides does not bear on another
	for (const id of state.attempts.open.values()) {
		const drill = state.attempts.drills.get(id);
		if (!drill || !isOverdue(state, drill, now)) continue;
		const { run, person } = drill;
		events.push(
			{ event: 'proving.given-up', data: { run, drill: id, person, why: 'lapsed' } },
			...consequences(state, drill, { right: false, miss: true })
		);
	}
	return accept(...events);
}
