import { evidenceGaps, stateOn, type CompetencyId, type Standing, type Validity } from '$lib/learning';
import type { Moment } from '../decision';
import type { SignOff } from '../folds/sign-offs';
import { trainingKey } from '../folds/training';
import type { State } from '../state';
import { dayOf } from './calendar-day';
import { evidenceFor, signOffOf, type EvidenceFound } from './evidence';
import { refreshersDue, type RefresherDue } from './refreshers';
import { validityOf } from './validity-of';

/** Everything there is to say about one person in one competency at a moment. */
export interface Certification {
	readonly standing: Standing;
	readonly evidence: EvidenceFound;
	/** The latest signature, whatever became of it. */
	readonly signOff: SignOff | null;
	readonly validity: Validity | null;
	readonly refreshers: readonly RefresherDue[];
	/** Signed, in date, and nothing to be proven again: may work alone. */
	readonly mayWorkAlone: boolean;
}

/** The state the last act of a person led to, before dates are looked at. */
function decidedStanding(
	state: State,
	person: string,
	competency: string,
	signOff: SignOff | undefined
): Standing {
	const start = state.training.get(trainingKey(person, competency));
	if (start && (!signOff || start.at > signOff.signedAt))
		return { state: 'in-training', since: dayOf(state, start.at) };
	if (!signOff) return { state: 'none', since: null };
	if (signOff.withdrawn) return { state: 'withdrawn', since: dayOf(state, signOff.withdrawn.at) };
	if (signOff.suspended) return { state: 'suspended', since: dayOf(state, signOff.suspended.at) };
	return { state: 'signed', since: signOff.validFrom };
}

export function certification(
	state: State,
	person: string,
	competency: CompetencyId,
	moment: Moment
): Certification {
	const signOff = signOffOf(state, person, competency);
	const evidence = evidenceFor(state, person, competency, moment);
	const refreshers = refreshersDue(state, person).filter((due) => due.competency === competency);
	const validity = signOff ? validityOf(signOff) : null;
	const standing = stateOn(
		decidedStanding(state, person, competency, signOff),
		{
			evidenceComplete: evidenceGaps(evidence).length === 0,
			validity
		},
		dayOf(state, moment.now)
	);
	return {
		standing,
		evidence,
		signOff: signOff ?? null,
		validity,
		refreshers,
		mayWorkAlone: standing.state === 'signed' && refreshers.length === 0
	};
}
