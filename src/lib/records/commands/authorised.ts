import {
	eligibility,
	type CompetencyId,
	type Eligibility,
	type Evidence,
	type Standing
} from '$lib/learning';
import { refuse, type Acting, type Refused } from '../decision';
import type { Conflict } from '../events/conflict';
import { certification } from '../standing/certification';
import type { State } from '../state';

const COMPLETE: Evidence = { lessonsDone: true, verdict: 'passed', safety: 'passed', practical: 'accepted' };

const NO_CONFLICT: Conflict = { trained: false, lineManager: false, relative: false, paidByResult: false };

/** Whether the actor may sign for a person in a competency, going by both their standings and the evidence. */
export function signing(
	state: State,
	acting: Acting,
	person: { readonly id: string; readonly state: Standing['state']; readonly evidence: Evidence },
	competency: CompetencyId,
	conflict: Conflict
): Eligibility {
	return eligibility(person, {
		id: acting.actor,
		state: certification(state, acting.actor, competency, acting).standing.state,
		foundingLead: state.shop.founded?.lead === acting.actor,
		trainedThePerson: Object.values(conflict).some(Boolean),
		conflictDeclared: true
	});
}

const OF_SIGNER: readonly Eligibility['missing'][number][] = [
	'signer-not-signed',
	'signer-authorisation-expired',
	'signer-suspended'
];

/** The first reason against a signature, the person's own record before all others. */
export function whyNot({ missing }: Eligibility): Refused | null {
	if (missing.length === 0) return null;
	if (missing.includes('own-record')) return refuse('own-record', 'person');
	const ofSigner = missing.filter((each) => OF_SIGNER.includes(each));
	if (ofSigner.length > 0) return refuse('not-signed-for-it', 'actor', ofSigner);
	if (missing.includes('state')) return refuse('wrong-state', 'person');
	return refuse('parts-missing', 'person', missing);
}

/** Watching and confirming take the same authority as signing, whatever evidence there is yet. */
export function unlessAuthorised(
	state: State,
	acting: Acting,
	person: string,
	competency: CompetencyId
): Refused | null {
	return whyNot(
		signing(state, acting, { id: person, state: 'signed', evidence: COMPLETE }, competency, NO_CONFLICT)
	);
}
