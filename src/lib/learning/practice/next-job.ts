import type { Skill } from '$lib/engine';
import { AIM } from './aim';
import { assertSeed } from './assert-seed';
import { expectedAt, skillRating, type JobOffer, type PracticeState } from './estimate';

/** A job to practise next, and why this one. */
export type NextJob = JobOffer & {
	/** Chance that it comes out right in its skill, between 0 and 1. */
	readonly expected: number;
	/** `first`: still getting used to one skill; `retrieval`: practised longest ago; `need`: the weakest; `drawn`: by lot. */
	readonly because: 'first' | 'need' | 'retrieval' | 'drawn';
};

/**
 * Blocked jobs of one skill before skills are mixed, and how often one is brought back from longest ago.
 * Source: Rohrer, Dedrick, Hartwig and Cheung 2020, on mixing kinds of problems (design read, figures from memory);
 * the two numbers themselves are teaching numbers.
 */
export const BLOCKED = 3;
const RETRIEVAL_EVERY = 4;

/** The least by each measure in turn; the seed picks among those that are alike in all of them. */
function least<T>(from: readonly T[], seed: number, ...measures: ((one: T) => number)[]): T {
	const alike = measures.reduce((left, measure) => {
		const lowest = Math.min(...left.map(measure));
		return left.filter((one) => measure(one) === lowest);
	}, from);
	return alike[seed % alike.length]!;
}

function choose(
	state: PracticeState,
	skills: readonly Skill[],
	seed: number
): Pick<NextJob, 'skill' | 'because'> {
	if (state.jobs < BLOCKED) return { skill: skills[0]!, because: 'first' };
	const others = skills.filter((skill) => skill !== state.lastSkill);
	const open = others.length ? others : skills;
	const met = open.filter((skill) => state.skills.has(skill));
	if (met.length && (state.jobs - BLOCKED) % RETRIEVAL_EVERY === RETRIEVAL_EVERY - 1)
		return { skill: least(met, seed, (skill) => state.skills.get(skill)!.last), because: 'retrieval' };
	const value = (skill: Skill) => skillRating(state, skill).value;
	const answers = (skill: Skill) => skillRating(state, skill).answers;
	return { skill: least(open, seed, value, answers), because: 'need' };
}

/**
 * The job to practise next. The first three are of the skill that is offered first; after them no skill follows
 * itself where another is offered, every fourth job is of the skill practised longest ago, and the others are of the
 * weakest skill. Of that skill it is the job whose chance of coming out right lies nearest to the aim.
 * @param offers in working order
 * @param seed whole number of 0 or more; the same one gives the same job
 * @returns undefined where nothing is offered
 */
export function nextJob(
	state: PracticeState,
	offers: readonly JobOffer[],
	seed: number
): NextJob | undefined {
	assertSeed(seed);
	if (!offers.length) return undefined;
	const { skill, because } = choose(state, [...new Set(offers.map((offer) => offer.skill))], seed);
	const offer = least(
		offers.filter((one) => one.skill === skill),
		seed,
		(one) => Math.abs(expectedAt(state, one) - AIM)
	);
	return { ...offer, expected: expectedAt(state, offer), because };
}
