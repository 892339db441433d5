import type { Skill } from '$lib/engine';
import { eloStep, type Rating } from './elo-step';
import { expectedRight } from './expected-right';
import { firstDifficulty } from './first-difficulty';
import { observed } from './observed';
import type { JobBreadth, PractisedJob } from './practised-job';

/** One choice of what to practise: a template and the skill it is offered for. */
export type JobOffer = { readonly part: string; readonly skill: Skill; readonly breadth: JobBreadth };

/** What practice so far says of one person. It steers practice only and proves nothing. */
export type PracticeState = {
	/** Jobs handed in. */
	readonly jobs: number;
	/** What the last job was for; undefined before the first job and after one that mixed many skills. */
	readonly lastSkill: Skill | undefined;
	/** Skills met so far; `last` is the number of the job, from 0, that asked for it last. */
	readonly skills: ReadonlyMap<Skill, Rating & { readonly last: number }>;
	/** Difficulty of each template met so far, for each skill it asked. */
	readonly templates: ReadonlyMap<string, Rating>;
};

const NEW_PERSON: Rating = { value: 0, answers: 0 };

const keyOf = ({ part, skill, breadth }: JobOffer) => `${part} ${breadth} ${skill}`;

const difficultyOf = (templates: PracticeState['templates'], offer: JobOffer): Rating =>
	templates.get(keyOf(offer)) ?? { value: firstDifficulty(offer.breadth), answers: 0 };

/** A person's estimate in a skill; 0 from no answers where it was never asked. */
export const skillRating = ({ skills }: Pick<PracticeState, 'skills'>, skill: Skill): Rating =>
	skills.get(skill) ?? NEW_PERSON;

/** Chance that the person gets the offered job right in its skill, between 0 and 1. */
export const expectedAt = (state: PracticeState, offer: JobOffer): number =>
	expectedRight(skillRating(state, offer.skill).value, difficultyOf(state.templates, offer).value);

/** Estimates skills and difficulties from the practice jobs of one person in the order they were handed in. */
export function estimate(history: readonly PractisedJob[]): PracticeState {
	const skills = new Map<Skill, Rating & { last: number }>();
	const templates = new Map<string, Rating>();
	for (const [last, job] of history.entries())
		for (const [skill, right] of observed(job)) {
			const offer = { part: job.part, breadth: job.breadth, skill };
			const after = eloStep(skillRating({ skills }, skill), difficultyOf(templates, offer), right);
			skills.set(skill, { ...after.skill, last });
			templates.set(keyOf(offer), after.job);
		}
	return { jobs: history.length, lastSkill: history.at(-1)?.skill, skills, templates };
}
