import type { Entry } from './entry';
import type { Fold } from './fold';
import { attemptsFold } from './folds/attempts';
import { incidentsFold } from './folds/incidents';
import { lessonsFold } from './folds/lessons';
import { peopleFold } from './folds/people';
import { practicalsFold } from './folds/practicals';
import { safetyFold } from './folds/safety';
import { shopFold } from './folds/shop';
import { signOffsFold } from './folds/sign-offs';
import { textsFold } from './folds/texts';
import { trainingFold } from './folds/training';

const FOLDS = {
	shop: shopFold,
	people: peopleFold,
	training: trainingFold,
	lessons: lessonsFold,
	attempts: attemptsFold,
	safety: safetyFold,
	practicals: practicalsFold,
	signOffs: signOffsFold,
	incidents: incidentsFold,
	texts: textsFold
};

/** Everything the entries add up to. Nothing is shown that is not in here. */
export type State = { [K in keyof typeof FOLDS]: (typeof FOLDS)[K] extends Fold<infer S> ? S : never };

const each = Object.entries(FOLDS) as [keyof State, Fold<unknown>][];

export const startState = (): State =>
	Object.fromEntries(each.map(([name, { start }]) => [name, start()])) as unknown as State;

/** Adds one entry. The cost does not grow with the length of the journal. */
export function applyEntry(state: State, entry: Entry): void {
	for (const [name, { apply }] of each) apply(state[name], entry);
}

export function foldEntries(entries: Iterable<Entry>): State {
	const state = startState();
	for (const entry of entries) applyEntry(state, entry);
	return state;
}
