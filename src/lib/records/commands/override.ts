import { refuse, type Refused } from '../decision';
import type { TextRef } from '../shapes';

/** A reason as kept in the erasable store, and how many characters it has. */
export interface Reason {
	readonly ref: TextRef;
	readonly length: number;
}

/** Shorter than this is not a reason that somebody else can follow later. */
export const REASON_LENGTH = 20;

/** Refuses to pass over something without saying why. */
export const unlessReasoned = (what: readonly string[], reason: Reason | null): Refused | null =>
	what.length > 0 && (reason === null || reason.length < REASON_LENGTH)
		? refuse('reason-missing', 'reason', what)
		: null;

export const overriding = (what: readonly string[], reason: Reason | null) =>
	what.length > 0 && reason ? { what: [...what], reason: reason.ref } : null;
