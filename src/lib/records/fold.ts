import type { Entry } from './entry';
import type { EventData, EventKind } from './event';

type Handlers<S> = { [K in EventKind]?: (state: S, data: EventData<K>, entry: Entry) => void };

/** One view of the record, built up entry by entry. Events without a handler pass it by. */
export interface Fold<S> {
	readonly start: () => S;
	readonly apply: (state: S, entry: Entry) => void;
}

export function foldOf<S>(start: () => S, on: Handlers<S>): Fold<S> {
	return {
		start,
		apply(state, entry) {
			const handle = on[entry.event] as ((state: S, data: Entry['data'], entry: Entry) => void) | undefined;
			handle?.(state, entry.data, entry);
		}
	};
}
