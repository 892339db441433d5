import { canonical } from './canonical';
import { seal } from './chain';
import type { Entry } from './entry';
import { JOURNAL_VERSION, type JournalEvent } from './event';
import type { Json } from './json';

/** The data exactly as it will be read back: fields that are undefined are gone, nothing is shared. */
const asStored = (data: unknown): Json => JSON.parse(canonical(data as Json)) as Json;

/** Number and hash of the last entry so far. */
export interface Head {
	readonly count: number;
	readonly hash: string;
}

/** The events of one act as lines of the journal, each linked to the one before. */
export function sealAct(
	events: readonly JournalEvent[],
	{ actor, at }: { readonly actor: string; readonly at: string },
	head: Head
): { readonly line: string; readonly entry: Entry }[] {
	let { count, hash } = head;
	return events.map(({ event, data }, index) => {
		const more = events.length - 1 - index;
		const body = { v: JOURNAL_VERSION, seq: (count += 1), at, actor, event, data: asStored(data), more };
		const line = seal({ ...body, prev: hash });
		const entry = JSON.parse(line) as Entry;
		hash = entry.hash;
		return { line, entry };
	});
}
