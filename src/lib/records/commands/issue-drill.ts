import { accept, refuse, type Acting, type Decision } from '../decision';
import type { EventData } from '../event';
import { ticketKey } from '../folds/attempts';
import { safetyStanding } from '../standing/safety';
import { schemeNamed } from '../standing/scheme';
import type { State } from '../state';
import { ifDrillOpen, unlessPerson } from './guards';

/** The ticket as issued and what is expected; whose it is and by which scheme follow from the run. */
export type IssueDrill = Omit<EventData<'proving.issued'>, 'person' | 'schemeHash'>;

/** Issues the next ticket of a run. Nobody chooses their ticket, and nobody meets one twice. */
export function issueDrill(state: State, wish: IssueDrill, acting: Acting): Decision {
	const { actor: person } = acting;
	const run = state.attempts.runs.get(wish.run);
	const refused = unlessPerson(state, person) ?? ifDrillOpen(state, person);
	if (refused) return refused;
	if (!run) return refuse('unknown-run', 'run');
	if (run.person !== person) return refuse('other-persons-run', 'run');
	if (run.concluded) return refuse('run-concluded', 'run');
	if (state.attempts.drills.has(wish.drill)) return refuse('id-taken', 'drill');
	if (state.attempts.seen.get(person)?.has(ticketKey(wish))) return refuse('ticket-seen-before', 'seed');
	if (run.rules.length > 0 && !run.rules.some((rule) => wish.rules.includes(rule)))
		return refuse('rules-not-covered', 'rules', run.rules);

	const scheme = schemeNamed(state, run.scheme);
	const gate = safetyStanding(state, person, scheme.limits.safety);
	if (gate.state === 'stopped' || gate.state === 'closed')
		return refuse('safety-stopped', 'run', [gate.state]);
	return accept({ event: 'proving.issued', data: { ...wish, person, schemeHash: run.scheme.hash } });
}
