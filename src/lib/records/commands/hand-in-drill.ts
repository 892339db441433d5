import { accept, refuse, type Acting, type Decision } from '../decision';
import type { EventData } from '../event';
import type { State } from '../state';
import { unlessPerson } from './guards';
import { ownOpenDrill } from './open-drill';
import { consequences } from './settle-drill';

/** The answers and what the engine says of them. */
export type HandInDrill = Omit<EventData<'proving.handed-in'>, 'run' | 'person'>;

/** Takes the answers to the open drill, once. A safety stop makes it wrong, whatever else was right. */
export function handInDrill(state: State, wish: HandInDrill, acting: Acting): Decision {
	const refused = unlessPerson(state, acting.actor);
	if (refused) return refused;
	const drill = ownOpenDrill(state, wish.drill, acting);
	if ('ok' in drill) return drill;
	const miss = wish.safetyMisses.length > 0;
	if (wish.right && miss) return refuse('malformed', 'right', ['safety-stop']);
	return accept(
		{ event: 'proving.handed-in', data: { ...wish, run: drill.run, person: drill.person } },
		...consequences(state, drill, { right: wish.right, miss })
	);
}
