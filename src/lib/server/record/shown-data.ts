import type { Entry, EventKind, State } from '$lib/records';

/** What would tell a person being proven their answers, or which of them were right. */
const WITHHELD: Partial<Record<EventKind, readonly string[]>> = {
	'proving.issued': ['seed', 'expected'],
	'proving.handed-in': ['right', 'safetyMisses', 'findings']
};

/** Whether an entry holds something that is shown only once the run it belongs to has its verdict. */
export function isWithheld({ attempts }: State, { event, data }: Entry): boolean {
	if (!WITHHELD[event] || !('run' in data)) return false;
	return attempts.runs.get(String(data.run))?.concluded === null;
}

/**
 * The entry as a person may see it. Whoever reads the record may be in the middle of a proving run themselves, so what
 * a run withholds from its person is withheld here too, and said to be by `mark`.
 */
export function shownEntry(state: State, entry: Entry, mark: string): Entry {
	if (!isWithheld(state, entry)) return entry;
	const hidden = (WITHHELD[entry.event] ?? []).map((key) => [key, mark]);
	return { ...entry, data: { ...entry.data, ...Object.fromEntries(hidden) } } as Entry;
}
