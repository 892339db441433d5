import type { JournalEvent } from './event';
import type { Refusal, RefusalCode } from './refusal';
import type { Requirements } from './requirements';

/** The moment a question is answered, and by which rules. */
export interface Moment {
	/** UTC, as `Date.prototype.toISOString` writes it. Always the server's clock, never the asker's. */
	readonly now: string;
	readonly requirements: Requirements;
}

export interface Acting extends Moment {
	readonly actor: string;
}

export interface Accepted {
	readonly ok: true;
	readonly events: readonly JournalEvent[];
}

export interface Refused {
	readonly ok: false;
	readonly refusal: Refusal;
}

/** What a command answers: the events that would be entered, or why none are. */
export type Decision = Accepted | Refused;

export const accept = (...events: readonly JournalEvent[]): Accepted => ({ ok: true, events });

export function refuse(code: RefusalCode, field?: string, detail?: readonly string[]): Refused {
	return { ok: false, refusal: { code, ...(field && { field }), ...(detail && { detail }) } };
}
