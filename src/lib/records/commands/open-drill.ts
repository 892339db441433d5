import { refuse, type Acting, type Refused } from '../decision';
import type { Drill } from '../folds/attempts';
import { schemeNamed } from '../standing/scheme';
import type { State } from '../state';

const HOUR_MS = 3_600_000;

/** Whether a drill was left longer than the scheme of its run allows. */
export function isOverdue(state: State, drill: Drill, now: string): boolean {
	const run = state.attempts.runs.get(drill.run);
	if (!run) throw new Error(`drill ${drill.drill} belongs to no run`);
	const { openHours } = schemeNamed(state, run.scheme).limits.drill;
	return Date.parse(now) - Date.parse(drill.issuedAt) >= openHours * HOUR_MS;
}

/** The drill that the actor may answer, or why they may not. */
export function ownOpenDrill(state: State, id: string, { actor, now }: Acting): Drill | Refused {
	const drill = state.attempts.drills.get(id);
	if (!drill) return refuse('unknown-drill', 'drill');
	if (drill.person !== actor) return refuse('other-persons-run', 'drill');
	if (drill.settled) return refuse('drill-settled', 'drill');
	return isOverdue(state, drill, now) ? refuse('drill-lapsed', 'drill') : drill;
}
