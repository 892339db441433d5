import type { Conflict } from '$lib/records';
import { typed } from '../typed';

export const CONFLICTS = [
	'trained',
	'lineManager',
	'relative',
	'paidByResult'
] as const satisfies readonly (keyof Conflict)[];

/** Chosen in place of people where nobody watched. */
export const NOBODY = 'nobody';

const YES_NO = ['yes', 'no'];

export type SignatureProblem = 'unanswered' | 'no-watcher' | 'nobody-and-somebody' | 'empty';

/** The declaration as chosen, and a problem for each question that was left open. */
export function readConflict(form: FormData) {
	const chosen = Object.fromEntries(CONFLICTS.map((question) => [question, typed(form, question)])) as Record<
		keyof Conflict,
		string
	>;
	const open = CONFLICTS.filter((question) => !YES_NO.includes(chosen[question]));
	return {
		chosen,
		problems: Object.fromEntries(open.map((question) => [question, 'unanswered' as const])),
		conflict: Object.fromEntries(
			CONFLICTS.map((question) => [question, chosen[question] === 'yes'])
		) as Conflict
	};
}

/** Who is said to have watched the proving. Nobody has to be said too. */
function readWatchers(form: FormData) {
	const chosen = [...new Set(form.getAll('watchedBy').filter((each) => typeof each === 'string'))].slice(
		0,
		50
	);
	const people = chosen.filter((each) => each !== NOBODY);
	const problem: SignatureProblem | null =
		chosen.length === 0
			? 'no-watcher'
			: people.length > 0 && people.length < chosen.length
				? 'nobody-and-somebody'
				: null;
	return { chosen, people, problem };
}

/** What a signer entered, as it was chosen or typed, with the problem of each entry that has one. */
export function readSignature(form: FormData) {
	const declaration = readConflict(form);
	const watchers = readWatchers(form);
	const problems: Partial<Record<string, SignatureProblem>> = {
		...declaration.problems,
		...(watchers.problem ? { watchedBy: watchers.problem } : {})
	};
	return {
		chosen: {
			...declaration.chosen,
			watchedBy: watchers.chosen,
			reason: typed(form, 'reason').slice(0, 2000),
			on: typed(form, 'on'),
			seen: typed(form, 'seen'),
			incident: typed(form, 'incident')
		},
		conflict: declaration.conflict,
		watchedBy: watchers.people,
		problems,
		ok: Object.keys(problems).length === 0
	};
}

export type ReadSignature = ReturnType<typeof readSignature>;
export type SignatureEntries = ReadSignature['chosen'];
export type SignatureProblems = ReadSignature['problems'];
