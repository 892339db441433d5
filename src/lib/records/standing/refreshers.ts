import type { Incident } from '../folds/incidents';
import type { State } from '../state';

export interface RefresherDue {
	readonly incident: string;
	readonly person: string;
	readonly competency: string;
	readonly rules: readonly string[];
	readonly defect: string;
	readonly conditions: Incident['conditions'];
	readonly since: string;
	/** The run that has proven these rules since, waiting to be signed for; null until then. */
	readonly provenBy: string | null;
}

/**
 * Skills to be proven again after an incident, until somebody has signed that they were. Such a competency
 * allows supervised work only; the sign-off itself is untouched.
 */
export function refreshersDue(state: State, person: string): RefresherDue[] {
	const due: RefresherDue[] = [];
	for (const {
		incident,
		person: who,
		decided,
		refresherSigned,
		defect,
		conditions
	} of state.incidents.values()) {
		if (who !== person || decided?.cause !== 'skill-gap' || refresherSigned) continue;
		const passed = [...state.attempts.runs.values()].find(
			(run) => run.incident === incident && run.concluded?.verdict === 'passed'
		);
		due.push({
			incident,
			person,
			competency: decided.competency,
			rules: decided.rules,
			defect,
			conditions,
			since: decided.at,
			provenBy: passed?.run ?? null
		});
	}
	return due;
}
