import type * as v from 'valibot';
import { incidentEvents } from './events/incident';
import { journalEvents } from './events/journal';
import { learningEvents } from './events/learning';
import { peopleEvents } from './events/people';
import { provingEvents } from './events/proving';
import { shopEvents } from './events/shop';
import { signOffEvents } from './events/sign-off';

/** Raised when an event's data changes shape; entries written under an older one keep theirs. */
export const JOURNAL_VERSION = 1;

/** Every event there can be, each with the shape of its data. Ids only: no names, no free text. */
export const EVENTS = {
	...shopEvents,
	...peopleEvents,
	...learningEvents,
	...provingEvents,
	...signOffEvents,
	...incidentEvents,
	...journalEvents
};

export type EventKind = keyof typeof EVENTS;
export type EventData<K extends EventKind> = v.InferOutput<(typeof EVENTS)[K]>;

/** An event that has happened but is not yet in the journal. */
export type JournalEvent = {
	[K in EventKind]: { readonly event: K; readonly data: EventData<K> };
}[EventKind];
