import type { AreaId, CompetencyId } from '$lib/learning';

/** What the rules ask of a person, read off the rules by whoever opens the journal. */
export interface Requirements {
	/** Lessons that must be done for an area; never none. */
	readonly lessonsOf: (area: AreaId) => readonly string[];
	/** Whether a rule of the competency belongs to a safety skill: its sign-off then holds for less long. */
	readonly holdsSafetySkill: (competency: CompetencyId) => boolean;
}
