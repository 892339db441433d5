import { DEMO_SHEETS, startDays } from '$lib/engine';
import {
	accept,
	dayOf,
	refuse,
	saveSheet,
	type Acting,
	type Decision,
	type Json,
	type State
} from '$lib/records';

const laterOf = (a: string, b: string) => (a > b ? a : b);

/** The invented sheets, all as one act, into a shop that has no sheet yet. */
export const addDemoSheets = (state: State, _wish: null, acting: Acting): Decision => {
	if (state.shop.sheets.size > 0) return refuse('id-taken');
	const today = dayOf(state, acting.now);
	const decisions = DEMO_SHEETS.map((sheet) =>
		saveSheet(
			state,
			{
				sheet: sheet.id,
				basedOn: 0,
				// no number of a sheet holds before its first day
				effective: laterOf(today, startDays(sheet)[0] ?? today),
				content: sheet as unknown as Json
			},
			acting
		)
	);
	const refused = decisions.find((decision) => !decision.ok);
	return refused ?? accept(...decisions.flatMap((decision) => (decision.ok ? decision.events : [])));
};
