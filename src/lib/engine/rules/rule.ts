import type { DefectId } from '../defects/defects';
import type { Situation } from '../plan/situation';
import type { FieldId } from '../setup/fields';
import type { Authority } from '../sources/authority';
import type { Provenance } from '../sources/provenance';
import type { Competency, Skill, Station } from '../station';
import type { Text } from '../text';
import type { Expectation } from './expectation';

export type Severity = 'safety-stop' | 'quality' | 'cost';

/** What comes out when the rule is broken to the low side, to the high side, or otherwise. */
export type Breaks = {
	readonly low?: readonly DefectId[];
	readonly high?: readonly DefectId[];
	readonly wrong?: readonly DefectId[];
};

/**
 * One thing that is right for a job. The same object prints the lesson's number, makes the plan, grades the answer and
 * is read backwards after a defect.
 */
export type Rule = {
	readonly id: string;
	readonly station: Station;
	/** Whose proof it belongs to; `safety` rules go to the safety gate. */
	readonly competency: Competency;
	readonly skill: Skill;
	readonly title: Text;
	readonly why: Text;
	readonly severity: Severity;
	/** Whose word it is when it meets another limit on the same field. */
	readonly authority: Authority;
	readonly provenance: Provenance;
	/** `lesson-slug#section-id`: the section that states limit and reason. */
	readonly lesson: `${string}#${string}`;
	readonly breaks: Breaks;
	/** What would happen to part or person when it is broken, in one sentence. */
	readonly outcome: Text;
	/** How to find out afterwards whether it was broken: what to look at, measure or ask for. */
	readonly evidence: Text;
	/** The one field of the set-up sheet it speaks of. */
	readonly field: FieldId;
	applies(situation: Situation): boolean;
	/** Only called where the rule applies. */
	expects(situation: Situation): Expectation;
};
