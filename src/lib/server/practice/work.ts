import { fieldsAt } from '$lib/drills';
import type { FieldId } from '$lib/engine';
import { movedOrder, readEntries, type Reader } from '$lib/paper';
import type { HintStep, PracticeDraft } from './draft';

/** The draft with the posted station written into it; undefined for a form that no page of ours sends. */
export function withPosted(draft: PracticeDraft, form: FormData, reader: Reader): PracticeDraft | undefined {
	const station = draft.stations[draft.at]!;
	const entries = readEntries(fieldsAt(draft.plan, station), form, reader);
	return entries && { ...draft, entries: { ...draft.entries, ...entries } };
}

/** Whether an entry of the station in hand cannot be read. */
export const unreadable = ({ plan, stations, at, entries }: PracticeDraft): boolean =>
	fieldsAt(plan, stations[at]!).some((id) => entries[id]?.problem);

/** One Up or Down pressed without JavaScript; undefined where no such button is on the sheet in hand. */
export function withMove(draft: PracticeDraft, pressed: string, form: FormData): PracticeDraft | undefined {
	const moved = movedOrder(pressed, form);
	if (!moved || !fieldsAt(draft.plan, draft.stations[draft.at]!).includes(moved.field)) return undefined;
	const entry = { answer: { kind: 'order' as const, options: moved.options } };
	return { ...draft, entries: { ...draft.entries, [moved.field]: entry } };
}

/** One rung more of the hint ladder for a field of the station in hand. */
export function withHint(draft: PracticeDraft, id: string): PracticeDraft | undefined {
	const at = fieldsAt(draft.plan, draft.stations[draft.at]!).find((one) => one === id) as FieldId | undefined;
	if (!at) return undefined;
	const step = Math.min((draft.hints[at] ?? 0) + 1, 3) as HintStep;
	return { ...draft, hints: { ...draft.hints, [at]: step } };
}

export function withCheck(draft: PracticeDraft): PracticeDraft {
	const station = draft.stations[draft.at]!;
	return { ...draft, checked: [...new Set([...draft.checked, station])] };
}

export const atNext = (draft: PracticeDraft): PracticeDraft => ({
	...draft,
	at: Math.min(draft.at + 1, draft.stations.length - 1)
});
