import type { RequestEvent } from '@sveltejs/kit';
import { finishLesson, type LessonDone } from '$lib/records';
import { act } from './act';
import type { App } from './app';
import { requirePerson } from './guard';

/** A lesson as the record names it. */
export type LessonRef = { readonly slug: string; readonly version: number };

/** Tries at the checks of a lesson that is not done yet. */
export type LessonTries = {
	readonly version: number;
	/** Per check answered so far. */
	readonly checks: Readonly<Record<string, { readonly tries: number; readonly right: boolean }>>;
};

/** What became of a try: the lesson goes on, is in the record, or the record did not take it. */
export type TryNoted = 'open' | 'recorded' | 'refused';

/** Whose tries count: somebody with a part in the work. An auditor only reads. */
export const learner = ({ locals: { who } }: Pick<RequestEvent, 'locals'>): string | null =>
	who?.roles.some((role) => role !== 'auditor') ? who.id : null;

const key = (person: string, slug: string) => `lesson ${person} ${slug}`;

/** Tries kept for a person; none when the lesson's meaning has changed since. */
export function lessonTries(
	{ drafts }: Pick<App, 'drafts'>,
	person: string,
	{ slug, version }: LessonRef
): LessonTries {
	const kept = drafts.get<LessonTries>(key(person, slug));
	return kept?.version === version ? kept : { version, checks: {} };
}

/** When and in which version a person last did a lesson. */
export const lessonDone = (
	{ journal }: Pick<App, 'journal'>,
	person: string,
	slug: string
): LessonDone | undefined => journal.state.lessons.get(person)?.get(slug);

/**
 * Counts a try of whoever is signed in. When every check of the lesson is right, the lesson is entered in the record
 * and its tries are forgotten; a record that refuses leaves them as they are.
 * @param asked ids of the checks that have to be right
 */
export async function noteTry(
	event: RequestEvent,
	lesson: LessonRef,
	asked: readonly string[],
	check: string,
	right: boolean
): Promise<TryNoted> {
	const { app, lang } = event.locals;
	const { id: person } = requirePerson(event);
	const { checks } = lessonTries(app, person, lesson);
	const before = checks[check] ?? { tries: 0, right: false };
	// a check once right stays right: the tries it took are already known
	const now = before.right ? before : { tries: before.tries + 1, right };
	const after = { version: lesson.version, checks: { ...checks, [check]: now } };
	await app.drafts.put(key(person, lesson.slug), after);
	if (!asked.every((id) => after.checks[id]?.right)) return 'open';

	const tries = Object.fromEntries(asked.map((id) => [id, after.checks[id]!.tries]));
	const wish = { lesson: lesson.slug, lessonVersion: String(lesson.version), lang, tries };
	const outcome = await act(event, finishLesson, wish);
	if (!outcome.ok) return 'refused';
	await app.drafts.drop(key(person, lesson.slug));
	return 'recorded';
}
