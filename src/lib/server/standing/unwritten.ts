import type { Conflict, TextRef } from '$lib/records';

/** Stands for a text that would be kept: asking the record whether an act is open writes nothing. */
export const UNWRITTEN: TextRef = { text: 'unwritten', hash: '0'.repeat(64), lang: 'en' };

/** A declaration to ask with; it never refuses an act, so what it says does not matter until one is done. */
export const UNDECLARED: Conflict = {
	trained: false,
	lineManager: false,
	relative: false,
	paidByResult: false
};
