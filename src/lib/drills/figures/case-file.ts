import type { Answer, DefectId, Degree, Expectation, FieldId, TestEnd } from '$lib/engine';

/** What the record says of one rule that can have led to the defect. */
export type CaseLine = {
	readonly rule: string;
	/** The line of the set-up sheet it speaks of. */
	readonly field: FieldId;
	readonly says: 'broken' | 'kept' | 'nothing';
	/** What was written; null where nothing was. */
	readonly answer: Answer | null;
	/** What was right for the job. */
	readonly expected: Expectation;
	readonly testEnds: TestEnd;
};

/** What a test came out with: that one of its rules was broken, or all of them kept. */
export type CaseResult = { readonly rules: readonly string[]; readonly broken: boolean };

/** What is only told once the drill is handed in, all of it from the teaching network. */
export type CaseTold = {
	/** In working order: chance that the rule was broken, before and after the test of the second page, and whether it was. */
	readonly causes: readonly {
		readonly rule: string;
		readonly before: number;
		readonly after: number;
		readonly was: boolean;
	}[];
	/** What each test was expected to tell at first, in bits, most first; one of no rules tests no cause. */
	readonly tests: readonly { readonly rules: readonly string[]; readonly bits: number }[];
};

/** A defective panel with what is known of how it was made. The defect's name is for whoever draws it, not for a page. */
export type CaseFile = {
	readonly kind: 'case-file';
	readonly panel: { readonly defect: DefectId; readonly severity: Degree; readonly seed: number };
	/** In working order. */
	readonly lines: readonly CaseLine[];
	/** Null before any test was done. */
	readonly result: CaseResult | null;
	readonly told: CaseTold;
};
