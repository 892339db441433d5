import type { CertificationState } from './certification-state';

/** How somebody may do the work of a competency: alone, while somebody signed for it watches, or not at all. */
export type WorkAllowed = 'alone' | 'supervised' | 'none';

const ofState: Readonly<Record<CertificationState, WorkAllowed>> = {
	none: 'none',
	'in-training': 'supervised',
	eligible: 'supervised',
	signed: 'alone',
	// what was learned is still there; what is missing is that somebody answers for it
	'continuity-lapsed': 'supervised',
	expired: 'supervised',
	suspended: 'none',
	withdrawn: 'none'
};

/** A refresher that is due limits signed work to supervised work, and never takes more than that. */
export const workAllowed = (state: CertificationState, refresherDue: boolean): WorkAllowed =>
	refresherDue && ofState[state] === 'alone' ? 'supervised' : ofState[state];
