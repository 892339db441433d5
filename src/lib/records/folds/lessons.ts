import { foldOf } from '../fold';

export interface LessonDone {
	readonly lesson: string;
	readonly version: string;
	readonly lang: 'en' | 'es';
	/** Per check in the lesson, how many tries it took. */
	readonly tries: Readonly<Record<string, number>>;
	readonly at: string;
}

/** Person to lesson to the last time it was done. */
export type LessonsState = Map<string, Map<string, LessonDone>>;

export const lessonsFold = foldOf<LessonsState>(() => new Map(), {
	'lesson.done': (lessons, { person, lesson, lessonVersion, lang, tries }, { at }) => {
		const done = lessons.get(person) ?? new Map<string, LessonDone>();
		done.set(lesson, { lesson, version: lessonVersion, lang, tries, at });
		lessons.set(person, done);
	}
});
