import { ticketKey } from '../folds/attempts';
import type { State } from '../state';

/** What one person handed in on a ticket they had never met before: which of its rules were kept and which were not. */
export interface FirstAttempt {
	readonly person: string;
	readonly how: 'practice' | 'proving';
	/** Kind of drill that issued the ticket. */
	readonly kind: string;
	/** Competency a proving drill was about; null in practice, where the record holds none. */
	readonly competency: string | null;
	/** Every rule the ticket asked about: true where it was kept. */
	readonly kept: ReadonlyMap<string, boolean>;
}

const keptOf = ({
	rules,
	findings
}: {
	readonly rules: readonly string[];
	readonly findings: readonly string[];
}) => new Map(rules.map((rule) => [rule, !findings.includes(rule)]));

function* practised(state: State): Generator<FirstAttempt> {
	for (const [person, attempts] of state.attempts.practice) {
		const met = new Set<string>();
		for (const attempt of attempts) {
			const ticket = ticketKey(attempt);
			if (met.has(ticket)) continue;
			met.add(ticket);
			// what was put right after a check says nothing of what the person knew
			const kept = keptOf({ rules: attempt.rules, findings: attempt.first?.findings ?? attempt.findings });
			yield { person, how: 'practice', kind: attempt.kind, competency: null, kept };
		}
	}
}

function* proven(state: State): Generator<FirstAttempt> {
	for (const { person, kind, rules, run, settled } of state.attempts.drills.values()) {
		const of = state.attempts.runs.get(run);
		if (!of?.concluded || settled?.how !== 'handed-in') continue;
		const kept = keptOf({ rules, findings: settled.findings });
		yield { person, how: 'proving', kind, competency: of.competency, kept };
	}
}

/**
 * First attempts at tickets, practising and proving. A second go at a ticket tells of the memory and is left out. So
 * are proving drills of a run without a verdict, of which nobody is told what was right, and drills that were given up
 * or lapsed, which say nothing about a rule.
 */
export const firstAttempts = (state: State): readonly FirstAttempt[] => [
	...practised(state),
	...proven(state)
];
