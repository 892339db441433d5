import { RULES, type Skill } from '$lib/engine';
import type { JobBreadth, JobOffer, PractisedJob } from '$lib/learning';

export const rulesOf = (skill: Skill) => RULES.filter((rule) => rule.skill === skill).map(({ id }) => id);

/** A job that asks two rules of one skill, all kept or the second found broken. */
export function practised(skill: Skill, right = true, breadth: JobBreadth = 1): PractisedJob {
	const rules = rulesOf(skill).slice(0, 2);
	return { part: `part-${skill}`, breadth, skill, rules, findings: right ? [] : rules.slice(1) };
}

/** A part of each skill, in all three breadths. */
export const offersOf = (...skills: Skill[]): JobOffer[] =>
	skills.flatMap((skill) =>
		([1, 2, 3] as const).map((breadth) => ({ part: `part-${skill}`, skill, breadth }))
	);
