import { dayOf, type State } from '$lib/records';

/** What the record says was erased: day by text id. */
export const erasures = (state: State): Map<string, string> =>
	new Map([...state.texts.erased].map(([id, at]) => [id, dayOf(state, at)]));
