import type { CertificationState } from './certification-state';
import { evidenceGaps, type Evidence, type EvidenceGap } from './evidence';

export type Signer = {
	readonly id: string;
	/** The signer's own state in the competency on the day of signing. */
	readonly state: CertificationState;
	/** The lead who set up the shop, before whom nobody could have signed for them. */
	readonly foundingLead: boolean;
	readonly trainedThePerson: boolean;
	readonly conflictDeclared: boolean;
};

export type Missing =
	| EvidenceGap
	| 'own-record'
	| 'signer-not-signed'
	| 'signer-authorisation-expired'
	| 'signer-suspended'
	| 'conflict-declaration'
	| 'state';

/** Allowed, but stored and printed with the signature. */
export type Flag = 'founding-lead' | 'non-independent';

export type Eligibility = {
	readonly may: boolean;
	readonly missing: readonly Missing[];
	readonly flags: readonly Flag[];
};

function signerGap(signer: Signer): Missing | 'founding-lead' | null {
	switch (signer.state) {
		case 'signed':
			return null;
		case 'expired':
		case 'continuity-lapsed':
			return 'signer-authorisation-expired';
		case 'suspended':
			return 'signer-suspended';
		case 'withdrawn':
			return 'signer-not-signed';
		default:
			// Founding covers a sign-off never had, not one that was lost.
			return signer.foundingLead ? 'founding-lead' : 'signer-not-signed';
	}
}

/**
 * May this signer sign this person's competency today, and if not, everything that is missing.
 * Says nothing of roles and windows of time: those belong to the act (see transition).
 */
export function eligibility(
	person: { readonly id: string; readonly state: CertificationState; readonly evidence: Evidence },
	signer: Signer
): Eligibility {
	const missing: Missing[] = evidenceGaps(person.evidence);
	const flags: Flag[] = [];

	if (!['in-training', 'eligible', 'signed'].includes(person.state)) missing.push('state');
	if (person.id === signer.id) missing.push('own-record');
	const gap = signerGap(signer);
	if (gap === 'founding-lead') flags.push(gap);
	else if (gap !== null) missing.push(gap);
	if (!signer.conflictDeclared) missing.push('conflict-declaration');
	if (signer.trainedThePerson) flags.push('non-independent');

	return { may: missing.length === 0, missing, flags };
}
