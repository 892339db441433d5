import { incidents, refusalText, type Lang } from '$lib/i18n';
import type { Outcome } from '$lib/records';
import { refused } from '../refused';
import { typed } from '../typed';
import type { ToCorrect } from './to-correct';

/** A form that was not entered, as it goes back to its page: why, and everything that was typed. */
export type SentBack = {
	readonly status: number;
	readonly problem: string;
	/** Words by field. */
	readonly problems: Readonly<Record<string, string>>;
	readonly kept: Readonly<Record<string, string>>;
	readonly rules: readonly string[];
};

/** Every field of the forms of an incident; what else a form brings along is not sent back. */
const FIELDS = ['rule', 'shown', 'note', 'evidence', 'action', 'jobsChecked', 'repeats'];

const textsOf = (form: FormData): Record<string, string> =>
	Object.fromEntries(FIELDS.map((field) => [field, typed(form, field)]));

/** What to send back for an act that was not done; null when it was. */
export function sentBack(
	form: FormData,
	done: Outcome | ToCorrect | 'tampered',
	lang: Lang
): SentBack | null {
	const words = incidents[lang];
	const typed = { kept: textsOf(form), rules: form.getAll('rules').map(String), problems: {} };
	if (done === 'tampered') return { ...typed, status: 400, problem: words.tampered };
	if ('problems' in done) return { ...typed, status: 400, problem: words.correct, problems: done.problems };
	if (done.ok) return null;
	const { status, data } = refused(done);
	return { ...typed, status, problem: refusalText(data.refusal, lang) };
}
