import type { Rule } from '../rules/rule';
import type { Competency, Skill, Station } from '../station';
import type { Text } from '../text';
import { causesOf, type Direction } from './causes';
import type { Circumstances } from './circumstances';
import type { DefectId } from './defects';
import { FITS, judge, type Fit, type Recorded } from './fit';

/** One way a defect can have come about. */
export type Cause = {
	readonly rule: string;
	readonly direction: Direction;
	readonly title: Text;
	readonly station: Station;
	readonly competency: Competency;
	readonly skill: Skill;
	/** The section that teaches the rule, for the refresher. */
	readonly lesson: Rule['lesson'];
	/** What tells this cause from the others. */
	readonly test: Text;
	readonly fit: Fit;
	/** What the fit rests on, where the record says something. */
	readonly recorded: Recorded | null;
};

/**
 * What can have caused a defect, the best fit to what is known first (see FITS). Causes that fit equally well stand in
 * working order, safety rules last, because an earlier station is looked at first. Nothing is left out: a cause that a
 * record or a test speaks against moves down and says why.
 */
export function diagnose(defect: DefectId, circumstances: Circumstances = {}): readonly Cause[] {
	const judged = judge(circumstances);
	return causesOf(defect)
		.map(({ rule, direction }): Cause => {
			const { id, title, station, competency, skill, lesson, evidence } = rule;
			return {
				rule: id,
				direction,
				title,
				station,
				competency,
				skill,
				lesson,
				test: evidence,
				...judged(rule, direction)
			};
		})
		.toSorted((one, other) => FITS.indexOf(one.fit) - FITS.indexOf(other.fit));
}
