import { safetyGate, verdict, type SequentialPlan } from '$lib/learning';
import type { JournalEvent } from '../event';
import type { Drill, Run } from '../folds/attempts';
import { safetyStanding } from '../standing/safety';
import { schemeNamed } from '../standing/scheme';
import type { State } from '../state';

/** What follows for the run when one more drill of it is settled: its verdict, if this drill decides it. */
function concludeRun(state: State, run: Run, right: boolean): JournalEvent[] {
	const earlier = run.drills
		.map((id) => state.attempts.drills.get(id)?.settled?.right)
		.filter((outcome) => outcome !== undefined);
	const reached = verdict(run.plan as unknown as SequentialPlan, [...earlier, right]);
	if (reached.state === 'open') return [];
	return [
		{
			event: 'proving.concluded',
			data: {
				run: run.run,
				person: run.person,
				// a plan without an end rule may leave a run undecided, and that is no pass
				verdict: reached.state === 'passed' ? 'passed' : 'failed',
				drills: reached.n,
				right: reached.right
			}
		}
	];
}

/** What follows at the safety gate of the person. */
function concludeSafety(state: State, run: Run, miss: boolean): JournalEvent[] {
	const plan = schemeNamed(state, run.scheme).limits.safety;
	if (safetyStanding(state, run.person, plan).state !== 'open') return [];
	const steps = state.safety.get(run.person)?.steps ?? [];
	const gate = safetyGate(plan, [...steps, miss ? 'miss' : 'clear']);
	if (gate.state === 'open') return [];
	return [
		{
			event: 'safety.concluded',
			data: {
				person: run.person,
				verdict: gate.state === 'passed' ? 'passed' : 'stopped',
				drills: gate.drills,
				misses: gate.misses
			}
		}
	];
}

/** Everything that the outcome of one drill decides, to be entered in one act with it. */
export function consequences(
	state: State,
	drill: Drill,
	outcome: { right: boolean; miss: boolean }
): JournalEvent[] {
	const run = state.attempts.runs.get(drill.run);
	if (!run) throw new Error(`drill ${drill.drill} belongs to no run`);
	return [...concludeRun(state, run, outcome.right), ...concludeSafety(state, run, outcome.miss)];
}
