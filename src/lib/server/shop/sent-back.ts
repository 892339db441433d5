import { fail, type ActionFailure } from '@sveltejs/kit';
import { refusalText, type Lang } from '$lib/i18n';
import type { Refusal, Refused } from '$lib/records';
import { refused } from '../refused';

/** What a form that was not taken gets back: what was typed, and what is wrong, in words, by field. */
export interface SentBack {
	readonly kept: Readonly<Record<string, string | readonly string[]>>;
	/** A problem of the form as a whole stands under ''. */
	readonly problems: Readonly<Record<string, string>>;
}

export const sentBack = (
	kept: SentBack['kept'],
	problems: SentBack['problems'],
	status = 400
): ActionFailure<SentBack> => fail(status, { kept, problems });

/**
 * The answer where the record refused what a form wished for, at the field it is about.
 * @param fields the form's fields; a refusal about anything else is one of the form as a whole
 * @param inWords words of the screen where they say more than the record's own
 */
export const refusedAt = (
	outcome: Refused,
	kept: SentBack['kept'],
	{
		fields,
		lang,
		inWords
	}: { fields: readonly string[]; lang: Lang; inWords?: (refusal: Refusal) => string | null }
): ActionFailure<SentBack> => {
	const { refusal } = outcome;
	const at = refusal.field && fields.includes(refusal.field) ? refusal.field : '';
	return sentBack(kept, { [at]: inWords?.(refusal) ?? refusalText(refusal, lang) }, refused(outcome).status);
};
