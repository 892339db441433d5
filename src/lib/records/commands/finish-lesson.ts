import { accept, refuse, type Acting, type Decision } from '../decision';
import type { JournalEvent } from '../event';
import { safetyStanding } from '../standing/safety';
import { schemeAt } from '../standing/scheme';
import type { State } from '../state';
import { ifDrillOpen, unlessPerson } from './guards';

export interface FinishLesson {
	readonly lesson: string;
	readonly lessonVersion: string;
	readonly lang: 'en' | 'es';
	/** Per check in the lesson, how many tries it took until right: 1 or more. */
	readonly tries: Readonly<Record<string, number>>;
}

/** Everybody does their own lessons. The last of the safety lessons after a stop opens the safety gate anew. */
export function finishLesson(state: State, wish: FinishLesson, acting: Acting): Decision {
	const { actor: person, now, requirements } = acting;
	const refused = unlessPerson(state, person) ?? ifDrillOpen(state, person);
	if (refused) return refused;
	if (Object.keys(wish.tries).length === 0) return refuse('malformed', 'tries', ['none']);

	const { lesson, lessonVersion, lang, tries } = wish;
	const events: JournalEvent[] = [
		{ event: 'lesson.done', data: { person, lesson, lessonVersion, lang, tries: { ...tries } } }
	];
	const scheme = schemeAt(state, now);
	const stoppedAt = state.safety.get(person)?.concluded?.at;
	if (stoppedAt && safetyStanding(state, person, scheme.limits.safety).state === 'stopped') {
		const lessons = [...requirements.lessonsOf('safety')];
		const redone = (each: string) =>
			each === lesson || (state.lessons.get(person)?.get(each)?.at ?? '') > stoppedAt;
		if (lessons.every(redone)) events.push({ event: 'safety.restarted', data: { person, lessons } });
	}
	return accept(...events);
}
