import type { Text } from '$lib/engine';
import type { IsoDate } from './calendar';
import { certificationStates, type CertificationState } from './certification-state';
import type { Standing } from './transition';
import type { Validity } from './validity';

/** What there ever was for one person in one competency. A lapse, a suspension or an expiry takes none of it away. */
export type PanelEvidence = {
	readonly lessonsDone: boolean;
	readonly proven: boolean;
	readonly practicalAccepted: boolean;
	readonly signedOff: boolean;
};

export type Finish = 'bare' | 'prepared' | 'coated' | 'cured' | 'signed';

export type Strip = {
	readonly state: CertificationState;
	readonly word: Text;
	readonly date: IsoDate;
	/** `until` is a last good day, ahead or gone by; `since` is the first day of the state. */
	readonly dateIs: 'until' | 'since';
};

export type SkillPanel = {
	readonly finish: Finish;
	/** Carried from the first signature on. */
	readonly strip: Strip | null;
};

/** How far a panel is finished. As on the line, a later step shows only on top of all earlier ones. */
function finishOf(evidence: PanelEvidence): Finish {
	if (evidence.signedOff) return 'signed';
	if (!evidence.lessonsDone) return 'bare';
	if (!evidence.proven) return 'prepared';
	return evidence.practicalAccepted ? 'cured' : 'coated';
}

function stripOf({ state, since }: Standing, validity: Validity | null): Strip {
	const date = state === 'signed' ? validity?.next.on : since;
	if (!date) throw new Error(`a panel that was signed and is now '${state}' has no date`);
	const lastGoodDay = state === 'signed' || state === 'expired' || state === 'continuity-lapsed';
	return { state, word: certificationStates[state], date, dateIs: lastGoodDay ? 'until' : 'since' };
}

/**
 * The picture of one competency: its finish is the evidence, its strip the state of the sign-off.
 * @throws Error when a panel once signed has no date to show
 */
export const skillPanel = (
	evidence: PanelEvidence,
	standing: Standing,
	validity: Validity | null
): SkillPanel => ({
	finish: finishOf(evidence),
	strip: evidence.signedOff ? stripOf(standing, validity) : null
});
