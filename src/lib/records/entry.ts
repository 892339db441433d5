import * as v from 'valibot';
import { JOURNAL_VERSION, type JournalEvent } from './event';
import { json } from './json';
import { count, hash, id, instant } from './shapes';

/** What stands around an event on its line. The event's own data is checked against its own shape. */
export const envelope = v.strictObject({
	v: v.literal(JOURNAL_VERSION),
	seq: v.pipe(count, v.minValue(1)),
	at: instant,
	/** The person who did it, or `program`. */
	actor: id,
	event: v.string(),
	data: json,
	/** How many entries of the same act follow. Entries of one act stand or fall together. */
	more: count,
	/** Hash of the entry before; 64 zeros in the first. */
	prev: hash,
	/** SHA-256 of the canonical text of all the rest. */
	hash
});

type Envelope = v.InferOutput<typeof envelope>;

/** One line of the journal. */
export type Entry = Readonly<Omit<Envelope, 'event' | 'data'>> & JournalEvent;
