import { accept, refuse, type Acting, type Decision } from '../decision';
import type { Conflict } from '../events/conflict';
import type { State } from '../state';
import { ifOwn, unlessRole } from './guards';

/** A second person looks at the evidence of a signature that was not independent, and adds their own. */
export function addSecondPerson(
	state: State,
	wish: { readonly signOff: string; readonly conflict: Conflict },
	acting: Acting
): Decision {
	const signed = state.signOffs.byId.get(wish.signOff);
	if (!signed) return refuse('unknown-sign-off', 'signOff');
	const refused = unlessRole(state, acting, 'supervisor') ?? ifOwn(signed.person, acting);
	if (refused) return refused;
	const { actor } = acting;
	if (signed.signer === actor) return refuse('same-signer', 'actor');
	if (signed.seconds.some(({ second }) => second === actor)) return refuse('signed-already', 'actor');
	if (signed.withdrawn) return refuse('wrong-state', 'signOff', ['withdrawn']);
	const { signOff, person } = signed;
	return accept({
		event: 'signoff.second-person',
		data: { signOff, person, second: actor, conflict: wish.conflict }
	});
}
