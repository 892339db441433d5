import {
	accept,
	setShopValue,
	type Acting,
	type Decision,
	type SetShopValue,
	type State
} from '$lib/records';

/** Several shop values as one act: all of them are entered, or none. */
export const setShopValues = (state: State, wishes: readonly SetShopValue[], acting: Acting): Decision => {
	const decisions = wishes.map((wish) => setShopValue(state, wish, acting));
	const refused = decisions.find((decision) => !decision.ok);
	return refused ?? accept(...decisions.flatMap((decision) => (decision.ok ? decision.events : [])));
};
