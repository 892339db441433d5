import { expectedRight } from './expected-right';

/** An estimate and what it rests on. */
export type Rating = {
	/** In logits, any number: of a person's skill the higher the abler, of a job the higher the harder. */
	readonly value: number;
	/** Answers it has been moved by, 0 or more. */
	readonly answers: number;
};

/** How far one answer moves an estimate that rests on n answers: a / (1 + b n). */
export type EloWeights = { readonly a: number; readonly b: number };

/**
 * Early answers move an estimate far, later ones less.
 * Source: Papoušek, Pelánek and Stanislav 2014, Adaptive practice of facts in domains with varied prior knowledge (from
 * memory and as quoted in public source code; by it the exact choice matters little).
 */
const ELO_WEIGHTS: EloWeights = { a: 1, b: 0.05 };

/**
 * One answer moves both sides, each by its own count: a right one lifts the skill and lowers the difficulty.
 *   skill += K (x - P), difficulty -= K (x - P), x = 1 for right and 0 for wrong, P = expectedRight
 * Source: Pelánek 2016, see expectedRight.
 */
export function eloStep(
	skill: Rating,
	job: Rating,
	right: boolean,
	{ a, b }: EloWeights = ELO_WEIGHTS
): { readonly skill: Rating; readonly job: Rating } {
	const surprise = (right ? 1 : 0) - expectedRight(skill.value, job.value);
	const moved = ({ value, answers }: Rating, way: 1 | -1): Rating => ({
		value: value + (way * a * surprise) / (1 + b * answers),
		answers: answers + 1
	});
	return { skill: moved(skill, 1), job: moved(job, -1) };
}
