import * as v from 'valibot';
import { canonical } from './canonical';
import { hashOf, NOTHING_BEFORE } from './chain';
import { envelope, type Entry } from './entry';
import { EVENTS } from './event';

export type LineFault =
	| 'not-json'
	| 'not-an-entry'
	| 'unknown-event'
	| 'wrong-data'
	| 'not-canonical'
	| 'wrong-number'
	| 'wrong-link'
	| 'wrong-hash'
	| 'earlier-than-before'
	| 'act-cut-short';

/** `line` counts from 1. `detail` names the place in the entry, for whoever looks into the file. */
export interface Fault {
	readonly line: number;
	readonly why: LineFault;
	readonly detail: string;
}

/** What the next line has to follow on from. */
export type Before = Pick<Entry, 'seq' | 'hash' | 'more' | 'at' | 'actor'> | null;

export type LineCheck =
	{ readonly ok: true; readonly entry: Entry } | ({ readonly ok: false } & Omit<Fault, 'line'>);

const bad = (why: LineFault, detail = ''): LineCheck => ({ ok: false, why, detail });

const firstIssue = (issues: [v.BaseIssue<unknown>, ...v.BaseIssue<unknown>[]]) =>
	`${v.getDotPath(issues[0]) ?? ''}: ${issues[0].message}`;

function parse(line: string): unknown {
	try {
		return JSON.parse(line);
	} catch {
		return undefined;
	}
}

/** Checks one line on its own and against the entry before it. */
export function checkLine(line: string, before: Before): LineCheck {
	const value = parse(line);
	if (value === undefined) return bad('not-json');

	const outer = v.safeParse(envelope, value);
	if (!outer.success) return bad('not-an-entry', firstIssue(outer.issues));
	const entry = value as Entry;
	// the hash comes before the shape: whoever edits a line by hand is told so, not that a field is odd
	if (entry.hash !== hashOf(outer.output)) return bad('wrong-hash');
	if (line !== canonical(outer.output)) return bad('not-canonical');
	if (entry.seq !== (before?.seq ?? 0) + 1) return bad('wrong-number', String(entry.seq));
	if (entry.prev !== (before?.hash ?? NOTHING_BEFORE)) return bad('wrong-link');
	if (before && entry.at < before.at && entry.event !== 'clock.set-back')
		return bad('earlier-than-before', entry.at);
	if (before && before.more > 0 && (entry.more !== before.more - 1 || entry.actor !== before.actor))
		return bad('act-cut-short');

	if (!Object.hasOwn(EVENTS, entry.event)) return bad('unknown-event', entry.event);
	const inner = v.safeParse(EVENTS[entry.event], entry.data);
	if (!inner.success) return bad('wrong-data', firstIssue(inner.issues));
	return { ok: true, entry };
}

export type Verification =
	{ readonly ok: true; readonly count: number; readonly head: string } | ({ readonly ok: false } & Fault);

/**
 * Recomputes the whole chain and names the first line that does not belong.
 * It cannot see entries missing at the very end, nor a chain written anew from the first line:
 * for that, compare `head` with one that was printed or kept elsewhere.
 */
export function verify(lines: readonly string[]): Verification {
	let before: Before = null;
	for (const [index, line] of lines.entries()) {
		const check = checkLine(line, before);
		if (!check.ok) return { ...check, line: index + 1 };
		before = check.entry;
	}
	if (before && before.more > 0) return { ok: false, line: lines.length, why: 'act-cut-short', detail: '' };
	return { ok: true, count: lines.length, head: before?.hash ?? NOTHING_BEFORE };
}
