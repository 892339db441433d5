import type { Answers, FieldId } from '$lib/engine';
import type { Entry } from '$lib/paper';

/** The readable answers among what was put in so far. */
export const answersIn = (entries: Partial<Record<FieldId, Entry>>): Answers =>
	Object.fromEntries(
		Object.entries(entries).flatMap(([id, entry]) => (entry.answer ? [[id, entry.answer]] : []))
	);
