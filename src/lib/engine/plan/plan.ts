import type { Answer } from '../grading/answer';
import type { Expectation } from '../rules/expectation';
import type { Severity } from '../rules/rule';
import type { Options } from '../setup/field';
import type { FieldId } from '../setup/fields';
import type { Authority } from '../sources/authority';
import type { Competency } from '../station';

/** What one rule expects of a field for this job; complete enough to grade with years later. */
export type Demand = {
	readonly rule: string;
	readonly competency: Competency;
	readonly severity: Severity;
	readonly authority: Authority;
	readonly expectation: Expectation;
};

/** A field that this job asks for. */
export type PlannedField = {
	readonly field: FieldId;
	/** All of them hold; numbers of different demands already meet. */
	readonly demands: readonly Demand[];
	/** Weaker demands that a stronger authority replaced for this job. */
	readonly superseded: readonly Demand[];
	/** An answer that meets every demand. */
	readonly answer: Answer;
	/** Options of this one question, where they differ from job to job; otherwise the field's own. */
	readonly offered?: Options;
};

/** Two demands on one field that cannot both be met. */
export type Conflict = { readonly field: FieldId; readonly rules: readonly string[] };

/** The engine's answer for a ticket: plain data, stored with every attempt. */
export type Plan = {
	readonly engine: string;
	readonly decision: 'accept' | 'ask' | 'refuse';
	/** Rules that stand against starting the job; empty where it is accepted. */
	readonly reasons: readonly string[];
	readonly conflicts: readonly Conflict[];
	readonly fields: readonly PlannedField[];
};
