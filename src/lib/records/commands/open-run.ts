import { accept, refuse, type Acting, type Decision } from '../decision';
import type { EventData } from '../event';
import { certification } from '../standing/certification';
import { safetyStanding } from '../standing/safety';
import { schemeAt } from '../standing/scheme';
import type { State } from '../state';
import { ifDrillOpen, isCompetency, unlessPerson, unlessRole } from './guards';
import { provingHistory } from './proving-history';

export interface OpenRun {
	readonly run: string;
	readonly competency: string;
	/** The incident whose refresher is to be proven; null for a run towards a sign-off. */
	readonly incident: string | null;
}

type Purpose = EventData<'proving.opened'>['purpose'];

/** Somebody begins to be proven in one competency. The test's plan is fixed here for the whole run. */
export function openRun(state: State, wish: OpenRun, acting: Acting): Decision {
	const { actor: person, now } = acting;
	const { run, competency, incident } = wish;
	const refused =
		unlessPerson(state, person) ?? unlessRole(state, acting, 'trainee') ?? ifDrillOpen(state, person);
	if (refused) return refused;
	if (!isCompetency(competency)) return refuse('unknown-competency', 'competency');
	if (state.attempts.runs.has(run)) return refuse('id-taken', 'run');
	for (const other of state.attempts.runs.values())
		if (other.person === person && other.competency === competency && !other.concluded)
			return refuse('run-open', 'competency', [other.run]);

	const scheme = schemeAt(state, now);
	const gate = safetyStanding(state, person, scheme.limits.safety);
	if (gate.state === 'stopped' || gate.state === 'closed')
		return refuse('safety-stopped', 'competency', [gate.state]);

	const { standing, evidence, refreshers } = certification(state, person, competency, acting);
	const refresher = refreshers.find((due) => due.incident === incident);
	if (incident && !refresher) return refuse('no-refresher-due', 'incident');
	if (refresher?.provenBy || (!incident && evidence.verdict === 'passed'))
		return refuse('already-passed', 'competency');
	if (!incident && !['in-training', 'eligible', 'signed', 'continuity-lapsed'].includes(standing.state))
		return refuse('wrong-state', 'competency', [standing.state]);

	const tries = provingHistory(state, person, competency, scheme.limits, acting, incident);
	if (!tries.may) {
		if (tries.waitsFor.includes('new-application'))
			return refuse('retests-used-up', 'competency', [tries.from]);
		if (tries.waitsFor.includes('days')) return refuse('retest-too-early', 'competency', [tries.from]);
		return refuse('lessons-not-redone', 'competency');
	}
	const purpose: Purpose = incident
		? 'refresher'
		: tries.sitting > 1
			? 'retest'
			: standing.state === 'in-training'
				? 'first'
				: 'renewal';
	return accept({
		event: 'proving.opened',
		data: {
			run,
			person,
			competency,
			purpose,
			incident,
			rules: [...(refresher?.rules ?? [])],
			plan: { ...scheme.limits.sequential },
			scheme: scheme.ref
		}
	});
}
