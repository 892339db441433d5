import type { SafetyStep } from '$lib/learning';
import { foldOf } from '../fold';

/** What counts at one person's safety gate, in order. */
export interface SafetyRecord {
	steps: SafetyStep[];
	/** How the present try ended, and when; null while it is open. */
	concluded: { readonly verdict: 'passed' | 'stopped'; readonly at: string } | null;
}

export type SafetyState = Map<string, SafetyRecord>;

function step(safety: SafetyState, person: string, what: SafetyStep): SafetyRecord {
	const record = safety.get(person) ?? { steps: [], concluded: null };
	record.steps.push(what);
	safety.set(person, record);
	return record;
}

export const safetyFold = foldOf<SafetyState>(() => new Map(), {
	'proving.handed-in': (safety, { person, safetyMisses }) => {
		step(safety, person, safetyMisses.length > 0 ? 'miss' : 'clear');
	},
	// Left safety fields are not right ones: otherwise walking away would wipe out a miss.
	'proving.given-up': (safety, { person }) => {
		step(safety, person, 'miss');
	},
	'safety.concluded': (safety, { person, verdict }, { at }) => {
		const record = safety.get(person);
		if (record) record.concluded = { verdict, at };
	},
	'safety.restarted': (safety, { person }) => {
		step(safety, person, 'lessons-redone').concluded = null;
	},
	'training.started': (safety, { person, areas, how }) => {
		if (how === 'new-application' && areas.includes('safety'))
			step(safety, person, 'new-application').concluded = null;
	}
});
