import { competencies, type CompetencyId } from '$lib/learning';
import { refuse, type Acting, type Refused } from '../decision';
import type { SignOff } from '../folds/sign-offs';
import type { Role } from '../shapes';
import { mayAct } from '../standing/roles';
import type { State } from '../state';

export const unlessRole = (state: State, { actor, now }: Acting, role: Role): Refused | null =>
	mayAct(state, actor, role, now) ? null : refuse('not-allowed', 'actor');

/** A person of the record who was not erased. Whoever only audits is nobody's trainee. */
export function unlessPerson(state: State, person: string): Refused | null {
	const found = state.people.get(person);
	if (!found) return refuse('unknown-person', 'person');
	return found.erasedAt ? refuse('person-erased', 'person') : null;
}

/** Nobody records, signs or decides anything about their own work. */
export const ifOwn = (person: string, { actor }: Acting): Refused | null =>
	person === actor ? refuse('own-record', 'person') : null;

const known = new Set<string>(competencies.map(({ id }) => id));

export const isCompetency = (id: string): id is CompetencyId => known.has(id);

/**
 * The competency a signature in the record is for.
 * @throws if there is none such: it was checked when it was entered
 */
export function competencyOf({ signOff, competency }: SignOff): CompetencyId {
	if (!isCompetency(competency)) throw new Error(`sign-off ${signOff} is for no competency`);
	return competency;
}

/** A person with a drill open has only what a real bench would have. */
export const ifDrillOpen = (state: State, person: string): Refused | null =>
	state.attempts.open.has(person) ? refuse('drill-open') : null;

/** Decisions are for today or later: what was in force in the past stays what it was. */
export const ifBackdated = (day: string, today: string, field: string): Refused | null =>
	day < today ? refuse('backdated', field, [today]) : null;
