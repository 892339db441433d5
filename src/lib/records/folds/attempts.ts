import type { EventData } from '../event';
import { foldOf } from '../fold';

/** How a proving drill ended. A drill that was left counts as wrong. */
export type Settled =
	| (Pick<EventData<'proving.handed-in'>, 'answers' | 'right' | 'safetyMisses' | 'findings'> & {
			readonly how: 'handed-in';
			readonly at: string;
	  })
	| { readonly how: 'given-up' | 'lapsed'; readonly at: string; readonly right: false };

export type Drill = EventData<'proving.issued'> & { readonly issuedAt: string; settled: Settled | null };

export type Run = EventData<'proving.opened'> & {
	readonly openedAt: string;
	readonly drills: string[];
	concluded: (Omit<EventData<'proving.concluded'>, 'run' | 'person'> & { readonly at: string }) | null;
};

/** `first` is null for attempts entered before first checks were. */
export type Practice = EventData<'practice.handed-in'> & {
	readonly at: string;
	first: Omit<EventData<'practice.first-check'>, 'person' | 'attempt'> | null;
};

export interface AttemptsState {
	runs: Map<string, Run>;
	drills: Map<string, Drill>;
	/** Person to the drill they have open. Nobody has two. */
	open: Map<string, string>;
	/** Person to the tickets they have met, practising or proving. */
	seen: Map<string, Set<string>>;
	/** Person to practice, which never counts. */
	practice: Map<string, Practice[]>;
}

/** Two tickets are the same when one kind of drill issued them from one seed. */
export const ticketKey = ({ kind, seed }: { kind: string; seed: string }): string => `${kind} ${seed}`;

function settle(attempts: AttemptsState, id: string, settled: Settled): void {
	const drill = attempts.drills.get(id);
	if (!drill) return;
	drill.settled = settled;
	attempts.open.delete(drill.person);
}

function see(attempts: AttemptsState, person: string, ticket: { kind: string; seed: string }): void {
	const seen = attempts.seen.get(person) ?? new Set();
	attempts.seen.set(person, seen.add(ticketKey(ticket)));
}

export const attemptsFold = foldOf<AttemptsState>(
	() => ({ runs: new Map(), drills: new Map(), open: new Map(), seen: new Map(), practice: new Map() }),
	{
		'practice.handed-in': (attempts, data, { at }) => {
			see(attempts, data.person, data);
			const practice = attempts.practice.get(data.person) ?? [];
			practice.push({ ...data, at, first: null });
			attempts.practice.set(data.person, practice);
		},
		'practice.first-check': (attempts, { person, attempt, ...first }) => {
			const handedIn = attempts.practice.get(person)?.find((one) => one.attempt === attempt);
			if (handedIn) handedIn.first = first;
		},
		'proving.opened': (attempts, data, { at }) => {
			attempts.runs.set(data.run, { ...data, openedAt: at, drills: [], concluded: null });
		},
		'proving.issued': (attempts, data, { at }) => {
			see(attempts, data.person, data);
			attempts.drills.set(data.drill, { ...data, issuedAt: at, settled: null });
			attempts.open.set(data.person, data.drill);
			attempts.runs.get(data.run)?.drills.push(data.drill);
		},
		'proving.handed-in': (attempts, { drill, answers, right, safetyMisses, findings }, { at }) =>
			settle(attempts, drill, { how: 'handed-in', at, answers, right, safetyMisses, findings }),
		'proving.given-up': (attempts, { drill, why }, { at }) =>
			settle(attempts, drill, { how: why, at, right: false }),
		'proving.concluded': (attempts, { run, verdict, drills, right }, { at }) => {
			const concluded = attempts.runs.get(run);
			if (concluded) concluded.concluded = { verdict, drills, right, at };
		}
	}
);
