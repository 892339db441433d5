import * as v from 'valibot';
import type { Refused } from './decision';
import type { JournalEvent } from './event';
import { id } from './shapes';

/** What was asked for, and of whose record: put down when a refusal belongs in the record. */
export interface LogRefusal {
	readonly what: string;
	readonly person?: string | undefined;
}

/** The entry for a refusal. A person id that is none (it came from a form) is left out, not written. */
export const refusalEvent = ({ refusal }: Refused, { what, person }: LogRefusal): JournalEvent => ({
	event: 'act.refused',
	data: { what, code: refusal.code, person: v.is(id, person) ? person : null }
});
