import { retest, type CompetencyId, type Retest, type Scheme } from '$lib/learning';
import type { Moment } from '../decision';
import { trainingKey } from '../folds/training';
import { dayOf } from '../standing/calendar-day';
import { signOffOf } from '../standing/evidence';
import type { State } from '../state';

/**
 * Whether a person may begin a proving run in a competency, going by the failed runs since training was last
 * started or signed for (for a refresher: since it came due) and the lessons done again after the last of them.
 */
export function provingHistory(
	state: State,
	person: string,
	competency: CompetencyId,
	limits: Scheme,
	moment: Moment,
	incident: string | null = null
): Retest {
	const start = state.training.get(trainingKey(person, competency))?.at ?? '';
	const signed = signOffOf(state, person, competency)?.signedAt ?? '';
	const from = signed > start ? signed : start;
	const failures = [...state.attempts.runs.values()]
		.filter(
			(run) => run.person === person && run.competency === competency && run.concluded?.verdict === 'failed'
		)
		.filter((run) =>
			incident ? run.incident === incident : run.purpose !== 'refresher' && run.openedAt >= from
		)
		.map((run) => run.concluded?.at ?? '');

	const lastFailure = failures.at(-1) ?? '';
	const doneAgain = moment.requirements
		.lessonsOf(competency)
		.map((lesson) => state.lessons.get(person)?.get(lesson)?.at ?? '');
	const redoneAt = doneAgain.every((at) => at > lastFailure) ? doneAgain.toSorted().at(-1) : undefined;
	return retest(
		// a refresher has no end of tries: until it is proven the person works supervised, and that has no date
		incident ? { ...limits.retest, most: Infinity } : limits.retest,
		{
			failedOn: failures.map((at) => dayOf(state, at)),
			lessonsRedoneOn: redoneAt ? [dayOf(state, redoneAt)] : []
		},
		dayOf(state, moment.now)
	);
}
