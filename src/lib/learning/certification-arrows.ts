import type { CertificationState } from './certification-state';

/** `scheme` is the passing of a date or the completion of evidence; everybody else is a named person. */
export type Actor = 'scheme' | 'supervisor' | 'lead';

export type Act =
	| 'start-training'
	| 'complete-evidence'
	| 'sign'
	| 'sign-again'
	| 'confirm-continuity'
	| 'confirm-late'
	| 'requalify'
	| 'suspend'
	| 'reinstate'
	| 'withdraw'
	| 'lapse'
	| 'expire'
	| 'recertify'
	| 'start-over'
	| 'new-application';

/** When an arrow is open, counted from the day the state began; see arrow-windows. */
export type WindowId = 'lapse-short' | 'lapse-long' | 'expiry-recent' | 'expiry-old';

export type Arrow = {
	readonly from: CertificationState;
	readonly act: Act;
	readonly to: CertificationState;
	readonly by: readonly Actor[];
	readonly window?: WindowId;
};

const scheme: readonly Actor[] = ['scheme'];
const signer: readonly Actor[] = ['supervisor', 'lead'];
const lead: readonly Actor[] = ['lead'];

/**
 * Every change of state there is; whatever is not listed is refused. Two principles the tests hold: nothing but a
 * named person's act leads to `signed`, and nothing but a named person's act suspends or withdraws.
 * A lapsed competency still expires on its date, or it could be confirmed years later.
 */
export const arrows: readonly Arrow[] = [
	{ from: 'none', act: 'start-training', to: 'in-training', by: signer },
	{ from: 'in-training', act: 'complete-evidence', to: 'eligible', by: scheme },
	{ from: 'eligible', act: 'sign', to: 'signed', by: signer },

	{ from: 'signed', act: 'confirm-continuity', to: 'signed', by: signer },
	{ from: 'signed', act: 'sign-again', to: 'signed', by: signer },
	{ from: 'signed', act: 'suspend', to: 'suspended', by: lead },
	{ from: 'signed', act: 'withdraw', to: 'withdrawn', by: lead },
	{ from: 'signed', act: 'lapse', to: 'continuity-lapsed', by: scheme },
	{ from: 'signed', act: 'expire', to: 'expired', by: scheme },

	{ from: 'suspended', act: 'reinstate', to: 'signed', by: lead },
	{ from: 'suspended', act: 'withdraw', to: 'withdrawn', by: lead },
	{ from: 'suspended', act: 'expire', to: 'expired', by: scheme },

	{ from: 'continuity-lapsed', act: 'confirm-late', to: 'signed', by: signer, window: 'lapse-short' },
	{ from: 'continuity-lapsed', act: 'requalify', to: 'signed', by: signer, window: 'lapse-long' },
	{ from: 'continuity-lapsed', act: 'withdraw', to: 'withdrawn', by: lead },
	{ from: 'continuity-lapsed', act: 'expire', to: 'expired', by: scheme },

	{ from: 'expired', act: 'recertify', to: 'in-training', by: signer, window: 'expiry-recent' },
	{ from: 'expired', act: 'start-over', to: 'in-training', by: signer, window: 'expiry-old' },

	{ from: 'withdrawn', act: 'new-application', to: 'in-training', by: lead }
];
