import { skills, type SkillId } from './skill';

const ofSafety = new Set(skills.filter(({ area }) => area === 'safety').map(({ id }) => id));

/** Whether any of the skills named by a competency's rules is one of safety: its sign-off then holds for less long. */
export const holdsSafetySkill = (named: Iterable<SkillId>): boolean =>
	[...named].some((skill) => ofSafety.has(skill));
