import type { CompetencyId, Evidence } from '$lib/learning';
import type { Moment } from '../decision';
import type { State } from '../state';
import { trainingKey } from '../folds/training';
import { signOffKey, type SignOff } from '../folds/sign-offs';
import { safetyStanding } from './safety';
import { schemeAt } from './scheme';

/** The parts a signature can rest on, with what each of them is. */
export interface EvidenceFound extends Evidence {
	/** Lessons of the competency that are done, and those still missing. */
	readonly done: readonly string[];
	readonly missing: readonly string[];
	readonly run: string | null;
	readonly practicalId: string | null;
	/** Whether the lessons too were done since the last start or signature. */
	readonly full: boolean;
}

const last = <T>(items: Iterable<T>, which: (item: T) => boolean): T | undefined =>
	[...items].findLast(which);

/** The latest signature in a competency, if any. */
export const signOffOf = (state: State, person: string, competency: string): SignOff | undefined =>
	state.signOffs.byId.get(state.signOffs.latest.get(signOffKey(person, competency)) ?? '');

/**
 * What there is for one person in one competency. Proving and practical count from the last start of training
 * or the last signature, whichever is later: no part is used twice. Lessons count from the last start only, and
 * from ever after an expiry of short standing.
 */
export function evidenceFor(
	state: State,
	person: string,
	competency: CompetencyId,
	moment: Moment
): EvidenceFound {
	const start = state.training.get(trainingKey(person, competency));
	const signedAt = signOffOf(state, person, competency)?.signedAt ?? '';
	const startedAt = start?.at ?? '';
	const from = signedAt > startedAt ? signedAt : startedAt;
	const lessonsFrom = start?.how === 'recertify' ? '' : startedAt;

	const required = moment.requirements.lessonsOf(competency);
	if (required.length === 0) throw new Error(`no lessons are required for '${competency}'`);
	const doneAt = (lesson: string) => state.lessons.get(person)?.get(lesson)?.at ?? null;
	const doneSince = (limit: string) => (lesson: string) => {
		const at = doneAt(lesson);
		return at !== null && at >= limit;
	};
	const isDone = doneSince(lessonsFrom);
	const missing = required.filter((lesson) => !isDone(lesson));

	const run = last(
		state.attempts.runs.values(),
		(each) =>
			each.person === person &&
			each.competency === competency &&
			each.purpose !== 'refresher' &&
			each.openedAt >= from &&
			each.concluded !== null
	);
	const practical = last(
		state.practicals.values(),
		(each) => each.person === person && each.competency === competency && each.takenAt >= from
	);
	const scheme = schemeAt(state, moment.now);
	return {
		lessonsDone: missing.length === 0,
		verdict: run?.concluded?.verdict ?? 'open',
		safety: safetyStanding(state, person, scheme.limits.safety).state,
		practical: practical?.result ?? 'none',
		done: required.filter(isDone),
		missing,
		run: run?.run ?? null,
		practicalId: practical?.practical ?? null,
		full: required.every(doneSince(from))
	};
}
