import type { CertificationState } from './certification-state';
import { workAllowed, type WorkAllowed } from './work-allowed';

/** States that somebody's signature led to and nobody has taken back. */
const SIGNED_FOR: readonly CertificationState[] = ['signed', 'continuity-lapsed', 'expired'];

/**
 * How a bench card gives the settings of a competency: for work alone, for supervised work, or not at all. Whoever was
 * never signed for in it may work supervised, but takes the settings from somebody who was.
 */
export const cardScope = (state: CertificationState, refresherDue: boolean): WorkAllowed =>
	SIGNED_FOR.includes(state) ? workAllowed(state, refresherDue) : 'none';
