import { refreshersDue, refuse, type Acting, type Decision, type State } from '$lib/records';

type Command<Wish> = (state: State, wish: Wish, acting: Acting) => Decision;

/** A command on a sign-off that has to be the named person's: what the page said and what is signed are one. */
export const onSignOffOf =
	<Wish extends { readonly signOff: string }>(person: string, command: Command<Wish>): Command<Wish> =>
	(state, wish, acting) =>
		state.signOffs.byId.get(wish.signOff)?.person === person
			? command(state, wish, acting)
			: refuse('unknown-sign-off', 'signOff');

/** A command on a refresher that has to be due for the named person in that competency. */
export const onRefresherOf =
	<Wish extends { readonly incident: string }>(
		{ person, competency }: { readonly person: string; readonly competency: string },
		command: Command<Wish>
	): Command<Wish> =>
	(state, wish, acting) =>
		refreshersDue(state, person).some(
			(due) => due.incident === wish.incident && due.competency === competency
		)
			? command(state, wish, acting)
			: refuse('no-refresher-due', 'incident');
