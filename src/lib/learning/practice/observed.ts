import { RULES, type Skill } from '$lib/engine';
import type { PractisedJob } from './practised-job';

const skillOf = new Map(RULES.map(({ id, skill }) => [id, skill]));

/**
 * What a job shows of each skill it asked: right where none of that skill's rules was found broken. A skill the job is
 * there for but that owns none of its rules, such as finding the cause of a defect, is right where nothing was found.
 * Rules of an earlier engine that are no more show nothing.
 */
export function observed({ skill, rules, findings }: PractisedJob): ReadonlyMap<Skill, boolean> {
	const seen = new Map<Skill, boolean>();
	for (const rule of rules) {
		const of = skillOf.get(rule);
		if (of) seen.set(of, (seen.get(of) ?? true) && !findings.includes(rule));
	}
	if (skill && !seen.has(skill)) seen.set(skill, findings.length === 0);
	return seen;
}
