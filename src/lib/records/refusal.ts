/** Every reason for which an act can be refused. Worded at the edge, in the reader's language. */
export const REFUSALS = [
	// the record
	'journal-broken',
	'malformed',
	'id-taken',
	'backdated',
	'in-the-future',
	// who is asking
	'not-allowed',
	'unknown-person',
	'person-erased',
	'own-record',
	'last-lead',
	// the shop
	'already-founded',
	'unknown-time-zone',
	'unknown-competency',
	'wrong-revision',
	'unchanged',
	// lessons, practice, proving
	'ticket-seen-before',
	'unknown-run',
	'other-persons-run',
	'run-open',
	'run-concluded',
	'already-passed',
	'retest-too-early',
	'retests-used-up',
	'lessons-not-redone',
	'safety-stopped',
	'drill-open',
	'unknown-drill',
	'drill-settled',
	'drill-lapsed',
	'no-refresher-due',
	'rules-not-covered',
	// practicals and signatures
	'not-witnessed',
	'gate-not-met',
	'not-signed-for-it',
	'parts-missing',
	'unknown-sign-off',
	'wrong-state',
	'reason-missing',
	'no-jobs',
	'practical-missing',
	'job-out-of-period',
	'same-signer',
	'signed-already',
	// incidents
	'unknown-incident',
	'incident-decided',
	'incident-undecided',
	'incident-closed',
	'refresher-open',
	'defect-came-back'
] as const;

export type RefusalCode = (typeof REFUSALS)[number];

/** An act that was not done, and why: data, not an exception. */
export interface Refusal {
	readonly code: RefusalCode;
	/** The part of the wish it is about. */
	readonly field?: string;
	/** Codes or ids that complete the reason. */
	readonly detail?: readonly string[];
}
