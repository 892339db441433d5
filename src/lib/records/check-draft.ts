import * as v from 'valibot';
import { refuse, type Refused } from './decision';
import { EVENTS, type JournalEvent } from './event';

/** Refuses an event whose data does not have the shape of its kind, naming the field. */
export function checkDraft(draft: JournalEvent): Refused | null {
	const check = v.safeParse(EVENTS[draft.event], draft.data);
	if (check.success) return null;
	return refuse('malformed', v.getDotPath(check.issues[0]) ?? draft.event, [check.issues[0].message]);
}
