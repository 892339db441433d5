import { RULES, taughtIn } from '$lib/engine';
import { holdsSafetySkill } from '$lib/learning';
import type { Requirements } from '$lib/records';

const rulesOf = (area: string) => RULES.filter(({ competency }) => competency === area);

/** What the rules ask of a person: the lessons that teach an area's rules, and whose rules hold a safety skill. */
export const requirements: Requirements = {
	lessonsOf: (area) => [...new Set(rulesOf(area).map(taughtIn))].sort(),
	holdsSafetySkill: (competency) => holdsSafetySkill(rulesOf(competency).map(({ skill }) => skill))
};
