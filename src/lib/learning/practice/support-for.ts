import type { Skill } from '$lib/engine';
import { AIM } from './aim';
import { skillRating, type PracticeState } from './estimate';

/** `worked`: shown with every answer and its reason; `half`: half of it filled in; `full`: all left to the person. */
export type Support = 'worked' | 'half' | 'full';

/** Teaching numbers: worked jobs before the first half one, and jobs of a skill handed in before the first full one. */
const WORKED = 2;
const HALF = 2;

/**
 * How much of the next job of a skill is done for the person. Examples help those new to a skill and hinder those who
 * have it, so they stop as soon as the job is expected to come out right.
 * Source: Barbieri and others 2023 on worked examples (figures read in the abstract); Kalyuga and others 2003 on the
 * reversal with expertise (from memory).
 * @param expected chance that the job comes out right, between 0 and 1
 * @param workedSeen worked jobs of this skill shown so far
 */
export function supportFor(
	state: PracticeState,
	skill: Skill,
	expected: number,
	workedSeen: number
): Support {
	const handedIn = skillRating(state, skill).answers;
	if (expected >= AIM && handedIn >= HALF) return 'full';
	if (workedSeen < WORKED) return 'worked';
	return handedIn < HALF ? 'half' : 'full';
}
