import { grade, type FieldId } from '$lib/engine';
import { movedOrder, readEntries, type Reader } from '$lib/paper';
import { answersIn } from './answers';
import { askedNow, offeredIn, type HintStep, type PracticeDraft } from './draft';

/** As much of a typed number as is kept. */
const LONGEST = 60;

/** The draft with the posted page written into it; undefined for a form that no page of ours sends. */
export function withPosted(draft: PracticeDraft, form: FormData, reader: Reader): PracticeDraft | undefined {
	const entries = readEntries(askedNow(draft), form, reader, offeredIn(draft));
	const flow = form.get('flow');
	return (
		entries && {
			...draft,
			entries: { ...draft.entries, ...entries },
			flow: typeof flow === 'string' ? flow.slice(0, LONGEST) : draft.flow
		}
	);
}

/** Whether an entry of the page in hand cannot be read. */
export const unreadable = (draft: PracticeDraft): boolean =>
	askedNow(draft).some((id) => draft.entries[id]?.problem);

/** One Up or Down pressed without JavaScript; undefined where no such button is on the sheet in hand. */
export function withMove(draft: PracticeDraft, pressed: string, form: FormData): PracticeDraft | undefined {
	const moved = movedOrder(pressed, form, offeredIn(draft));
	if (!moved || !askedNow(draft).includes(moved.field)) return undefined;
	const entry = { answer: { kind: 'order' as const, options: moved.options } };
	return { ...draft, entries: { ...draft.entries, [moved.field]: entry } };
}

/** One rung more of the hint ladder for a field of the page in hand. */
export function withHint(draft: PracticeDraft, id: string): PracticeDraft | undefined {
	const at = askedNow(draft).find((one) => one === id) as FieldId | undefined;
	if (!at) return undefined;
	const step = Math.min((draft.hints[at] ?? 0) + 1, 3) as HintStep;
	return { ...draft, hints: { ...draft.hints, [at]: step } };
}

/** The page in hand checked. What its first check finds is kept: what is put right afterwards was told. */
export function withCheck(draft: PracticeDraft): PracticeDraft {
	if (draft.checked.includes(draft.at)) return draft;
	const { breaches } = grade(draft.plan, answersIn(draft.entries), askedNow(draft));
	const found = breaches.map(({ rule }) => rule);
	return {
		...draft,
		checked: [...draft.checked, draft.at],
		firstFindings: [...new Set([...draft.firstFindings, ...found])]
	};
}

export const atNext = (draft: PracticeDraft): PracticeDraft => ({
	...draft,
	at: Math.min(draft.at + 1, draft.steps.length - 1)
});
