import { accept, type Acting, type Decision } from '../decision';
import type { State } from '../state';
import { unlessPerson } from './guards';
import { ownOpenDrill } from './open-drill';
import { consequences } from './settle-drill';

/** Leaves the open drill for good. It counts as wrong, its safety fields too. */
export function giveUpDrill(state: State, wish: { drill: string }, acting: Acting): Decision {
	const refused = unlessPerson(state, acting.actor);
	if (refused) return refused;
	const drill = ownOpenDrill(state, wish.drill, acting);
	if ('ok' in drill) return drill;
	const { run, person } = drill;
	return accept(
		{ event: 'proving.given-up', data: { run, drill: drill.drill, person, why: 'given-up' } },
		...consequences(state, drill, { right: false, miss: true })
	);
}
